// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QLocale>
#include <QStringList>
#include <QTranslator>
#include <memory>
#include <vector>

namespace wetfront::ui {

/// A language that the program speaks.
struct Language {
    QString code;  ///< ISO 639: "en"
    QString name;  ///< in the language itself
};

/// English first; then one for each catalogue that is built in.
[[nodiscard]] std::vector<Language> languages();

/// The code of the first of them that the program speaks, regions left aside ("es-MX" is Spanish); English if
/// it speaks none.
[[nodiscard]] QString first_spoken(const QStringList& wanted);

/// The texts of one language. In English, and in a language that is not spoken, there are none: every text
/// stays as it is written.
[[nodiscard]] std::shared_ptr<QTranslator> texts_in(const QString& code);

/// How numbers are written in it: as at the reader's place where that language is spoken there; else Spanish
/// as in most of Latin America (es-419, decimal point), and every other as in the language alone.
[[nodiscard]] QLocale locale_in(const QString& code, const QLocale& place);

}  // namespace wetfront::ui
