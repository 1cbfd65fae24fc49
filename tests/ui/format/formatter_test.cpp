// SPDX-License-Identifier: Apache-2.0
#include "format/formatter.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>
#include <map>
#include <memory>

namespace wetfront::ui {
namespace {

/// A catalogue in the hand: knows one context.
class Catalogue : public QTranslator {
public:
    std::map<QString, QString> texts;

    [[nodiscard]] bool isEmpty() const override { return texts.empty(); }
    QString translate(const char* context, const char* source, const char*, int) const override {
        const auto found = texts.find(QString::fromUtf8(source));
        return QByteArray{context} == "core" && found != texts.end() ? found->second : QString{};
    }
};

class Translated : public testing::Test {
protected:
    void SetUp() override { QCoreApplication::installTranslator(&catalogue_); }
    void TearDown() override { QCoreApplication::removeTranslator(&catalogue_); }
    Catalogue catalogue_;
};

const Formatter us{UnitSystem::us};
const Formatter si{UnitSystem::si};
const Formatter german{UnitSystem::si, QLocale{QLocale::German}};

// 24 m / 0.3048 m = 78.74 ft; 35 degC = 95 degF (both exact by definition, NIST SP 811 B.8).
TEST(FormatterTest, a_quantity_is_shown_in_the_unit_of_the_readers_system) {
    EXPECT_EQ(us.text(any(24.0_m)), "78.7 ft");
    EXPECT_EQ(si.text(any(24.0_m)), "24 m");
    EXPECT_EQ(us.text(any(celsius(35.0))), "95 °F");
    EXPECT_EQ(si.text(any(celsius(35.0))), "35 °C");
}

TEST(FormatterTest, number_and_unit_can_be_had_apart) {
    EXPECT_EQ(us.number(any(seconds(82.5))), "82.5");
    EXPECT_EQ(us.unit(any(seconds(82.5))), "s");
}

TEST(FormatterTest, the_decimal_mark_is_that_of_the_locale_and_thousands_have_none) {
    EXPECT_EQ(german.text(any(18.3_m)), "18,3 m");
    EXPECT_EQ(german.text(any(from_si<Length>(12345.6))), "12345,6 m");
    EXPECT_EQ(us.text(any(from_si<VolumeFlow>(100.0), Scale::coarse)), "211888 cfm");
}

// NIST SP 811 section 7.10.2: a space before the percent sign; US text has none.
TEST(FormatterTest, a_percent_sign_follows_the_custom_of_the_system) {
    EXPECT_EQ(us.text(any(40_percent)), "40%");
    EXPECT_EQ(si.text(any(40_percent)), "40 %");
}

TEST(FormatterTest, a_message_is_filled_with_texts_counts_quantities_and_messages) {
    const Message message{"%1: %2 of %3 (%4)",
                          {std::string{"North bank"}, 3, any(24.0_m), Message{"as %1", {7}}}};
    EXPECT_EQ(si.text(message), "North bank: 3 of 24 m (as 7)");
}

TEST(FormatterTest, a_placeholder_in_a_name_is_not_expanded) {
    EXPECT_EQ(si.text(Message{"%1 and %2", {std::string{"%2"}, std::string{"b"}}}), "%2 and b");
}

TEST(FormatterTest, an_empty_message_is_an_empty_text) {
    EXPECT_EQ(si.text(Message{}), "");
}

TEST_F(Translated, the_sentence_and_the_messages_inside_it_are_translated) {
    catalogue_.texts = {{"%1 on, every %2", "%2 cada vez, %1 en marcha"},
                        {"Base on-time", "Marcha base"},
                        {"%1: %2", "%1 = %2"}};
    EXPECT_EQ(si.text(Message{"%1 on, every %2", {any(seconds(85)), any(seconds(300))}}),
              "5 min cada vez, 85 s en marcha");
    EXPECT_EQ(si.text(Message{"%1: %2", {Message{"Base on-time"}, any(seconds(85))}}), "Marcha base = 85 s");
}

TEST_F(Translated, a_name_is_never_translated) {
    catalogue_.texts = {{"Note", "Nota"}};
    EXPECT_EQ(si.text(verbatim("Note")), "Note");
}

TEST_F(Translated, a_text_without_translation_stays_english) {
    catalogue_.texts = {{"Note", "Nota"}};
    EXPECT_EQ(si.text(Message{"Waste"}), "Waste");
}

TEST_F(Translated, a_reader_with_texts_of_his_own_reads_these_and_not_the_programs) {
    catalogue_.texts = {{"Note", "Nota"}, {"Waste", "Desperdicio"}};
    const auto own = std::make_shared<Catalogue>();
    own->texts = {{"Note", "Hinweis"}};
    const Formatter reader{UnitSystem::si, QLocale::c(), own};
    EXPECT_EQ(reader.text(Message{"%1: %2", {Message{"Note"}, Message{"Waste"}}}), "Hinweis: Waste");
}

TEST(FormatterTest, times_are_those_of_the_place_of_the_visit) {
    // 2026-07-01T03:30:00Z is the evening before, five hours west.
    const WallTime time{1'782'876'600'000, -300};
    EXPECT_EQ(us.date(time), "2026-06-30");
    EXPECT_EQ(us.date_and_time(time), "2026-06-30 22:30");
}

TEST(FormatterTest, a_running_clock_counts_minutes_and_cuts_what_has_not_passed_yet) {
    EXPECT_EQ(us.clock(0, false), "0:00");
    EXPECT_EQ(us.clock(45'290, true), "0:45.2");
    EXPECT_EQ(us.clock(45'999, false), "0:45");
    EXPECT_EQ(us.clock(723'000, true), "12:03.0");
    EXPECT_EQ(us.clock(3'600'000, false), "60:00");
    EXPECT_EQ(german.clock(45'290, true), "0:45,2");
}

TEST(FormatterTest, a_negative_time_has_a_minus_sign) {
    EXPECT_EQ(us.clock(-61'500, true), "-1:01.5");
}

}  // namespace
}  // namespace wetfront::ui
