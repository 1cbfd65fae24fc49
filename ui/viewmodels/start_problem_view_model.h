// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "format/formatter.h"
#include "store/backup.h"

namespace wetfront::ui {

/// A record file that could not be opened, and what can be done about it. Reads the file and its copies once,
/// when it is made; nobody may have the file open in this process. GUI thread.
class StartProblemViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString problem READ problem CONSTANT)
    Q_PROPERTY(
        QString notice READ notice CONSTANT)  ///< going back to a copy put another file there; or empty
    Q_PROPERTY(QString earlier READ earlier CONSTANT)  ///< why going back to a copy failed; or empty
    Q_PROPERTY(bool canLook READ canLook CONSTANT)     ///< it opens for reading
    Q_PROPERTY(QString copyDay READ copyDay CONSTANT)  ///< of the newest copy that reads well; empty: none
    Q_PROPERTY(QString copyHolds READ copyHolds CONSTANT)

public:
    StartProblemViewModel(const std::filesystem::path& file, const Clock& clock, const Error& problem,
                          QString notice, QString earlier, QObject* parent = nullptr);

    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QString notice() const { return notice_; }
    [[nodiscard]] QString earlier() const { return earlier_; }
    [[nodiscard]] bool canLook() const { return can_look_; }
    [[nodiscard]] QString copyDay() const { return QString::fromStdString(copy_.day); }
    [[nodiscard]] QString copyHolds() const { return copy_holds_; }
    /// The copy that is offered; its file is empty if none is.
    [[nodiscard]] const Backup& copy() const { return copy_; }

signals:
    // What is pressed.
    void tryAgain();
    void look();
    void goBack();

private:
    QString problem_;
    QString notice_;
    QString earlier_;
    bool can_look_ = false;
    Backup copy_;
    QString copy_holds_;
};

}  // namespace wetfront::ui
