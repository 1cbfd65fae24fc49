// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <QTranslator>
#include <memory>

namespace wetfront::ui {

/// The language of the program's screens: installs its texts, and Qt's own where they are on the machine, in
/// the application. Needs a QCoreApplication; GUI thread; one at a time.
class Speech {
public:
    /// `of_system`: language tags as the system has them, the first one wanted most.
    explicit Speech(QStringList of_system);
    ~Speech();
    Speech(const Speech&) = delete;
    Speech& operator=(const Speech&) = delete;

    /// Speaks the language of that code, or that of the system where it is empty; returns the code of what is
    /// spoken now.
    QString speak(const QString& chosen);

private:
    void fall_silent();

    QStringList of_system_;
    std::shared_ptr<QTranslator> texts_;
    QTranslator dialogs_;
};

}  // namespace wetfront::ui
