// SPDX-License-Identifier: Apache-2.0
#include "desktop/speech.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <utility>

#include "format/language.h"

namespace wetfront::ui {

Speech::Speech(QStringList of_system) : of_system_{std::move(of_system)} {}

Speech::~Speech() {
    fall_silent();
}

void Speech::fall_silent() {
    if (texts_) {
        QCoreApplication::removeTranslator(texts_.get());
        QCoreApplication::removeTranslator(&dialogs_);
    }
}

QString Speech::speak(const QString& chosen) {
    fall_silent();
    const QString code = first_spoken(chosen.isEmpty() ? of_system_ : QStringList{chosen});
    texts_ = texts_in(code);
    // The words of the print dialog; English where they are not installed.
    if (dialogs_.load(QStringLiteral("qtbase_%1").arg(code),
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(&dialogs_);
    }
    QCoreApplication::installTranslator(texts_.get());
    return code;
}

}  // namespace wetfront::ui
