// SPDX-License-Identifier: Apache-2.0
#include "format/language.h"

#include <gtest/gtest.h>

#include <set>

#include "format/formatter.h"

namespace wetfront::ui {
namespace {

TEST(LanguageTest, the_first_wanted_language_that_is_spoken_is_taken_whatever_its_region) {
    EXPECT_EQ(first_spoken({"es-MX", "es", "en-US"}), "es");
    EXPECT_EQ(first_spoken({"pt-BR", "es-419"}), "es");
    EXPECT_EQ(first_spoken({"en-GB", "es-ES"}), "en");
}

TEST(LanguageTest, english_is_spoken_where_no_wanted_language_is) {
    EXPECT_EQ(first_spoken({}), "en");
    EXPECT_EQ(first_spoken({"C"}), "en");
    EXPECT_EQ(first_spoken({"pt-BR", "de"}), "en");
}

TEST(LanguageTest, every_language_but_english_has_a_catalogue_in_the_program) {
    std::set<QString> names;
    for (const auto& language : languages()) {
        EXPECT_EQ(texts_in(language.code)->isEmpty(), language.code == "en") << language.code.toStdString();
        EXPECT_TRUE(names.insert(language.name).second);
    }
    EXPECT_EQ(names, (std::set<QString>{"English", "español"}));
}

// Unicode CLDR: es-MX and es-419 write 1.5, es-AR writes 1,5.
TEST(LanguageTest, spanish_has_the_decimal_mark_of_the_place_and_a_point_where_that_speaks_another) {
    EXPECT_EQ(locale_in("es", QLocale{QLocale::Spanish, QLocale::Mexico}).decimalPoint(), ".");
    EXPECT_EQ(locale_in("es", QLocale{QLocale::Spanish, QLocale::Argentina}).decimalPoint(), ",");
    EXPECT_EQ(locale_in("es", QLocale{QLocale::English, QLocale::UnitedStates}).decimalPoint(), ".");
    EXPECT_EQ(locale_in("es", QLocale::c()).decimalPoint(), ".");
}

TEST(LanguageTest, english_at_a_place_that_speaks_another_language_has_a_point) {
    EXPECT_EQ(locale_in("en", QLocale{QLocale::Spanish, QLocale::Argentina}).decimalPoint(), ".");
}

TEST(LanguageTest, a_formatter_speaks_the_language_that_it_is_given) {
    const Formatter spanish{UnitSystem::si, QLocale::c(), texts_in("es")};
    const Formatter english{UnitSystem::si, QLocale::c(), texts_in("en")};
    EXPECT_EQ(spanish.text(Message{"page %1 of %2", {2, 3}}), "página 2 de 3");
    EXPECT_EQ(english.text(Message{"page %1 of %2", {2, 3}}), "page 2 of 3");
}

}  // namespace
}  // namespace wetfront::ui
