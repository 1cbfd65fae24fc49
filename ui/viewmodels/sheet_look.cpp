// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheet_look.h"

#include "format/language.h"

namespace wetfront::ui {
namespace {

constexpr QLatin1String sheet_language{"sheet_language"};
constexpr QLatin1String sheet_units{"sheet_units"};
constexpr QLatin1String sheet_paper_size{"sheet_paper"};
constexpr QLatin1String us_units{"us"};
constexpr QLatin1String si_units{"si"};
constexpr QLatin1String letter_paper{"letter"};
constexpr QLatin1String a4_paper{"a4"};

}  // namespace

QVariantList SheetLook::languages() {
    QVariantList list;
    for (const auto& language : ui::languages()) {
        list.append(
            QVariantMap{{QStringLiteral("value"), language.code}, {QStringLiteral("text"), language.name}});
    }
    return list;
}

QString SheetLook::language() const {
    return first_spoken({paper_.chosen.kept(sheet_language), paper_.language});
}

QString SheetLook::units() const {
    const QString chosen = paper_.chosen.kept(sheet_units);
    const bool si = chosen.isEmpty() ? screen_.units() == UnitSystem::si : chosen == si_units;
    return si ? si_units : us_units;
}

QString SheetLook::paper() const {
    return paper_.chosen.kept(sheet_paper_size) == a4_paper ? a4_paper : letter_paper;
}

void SheetLook::set_language(const QString& code) {
    paper_.chosen.keep(sheet_language, code);
}
void SheetLook::set_units(const QString& name) {
    paper_.chosen.keep(sheet_units, name);
}
void SheetLook::set_paper(const QString& name) {
    paper_.chosen.keep(sheet_paper_size, name);
}

Formatter SheetLook::reader() const {
    const QString code = language();
    return Formatter{
        units() == si_units ? UnitSystem::si : UnitSystem::us,
        code == first_spoken({paper_.language}) ? screen_.locale() : locale_in(code, screen_.locale()),
        texts_in(code)};
}

Paper SheetLook::size() const {
    return paper() == a4_paper ? Paper::a4 : Paper::letter;
}

}  // namespace wetfront::ui
