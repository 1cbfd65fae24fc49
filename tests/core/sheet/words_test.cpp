// SPDX-License-Identifier: Apache-2.0
#include "sheet/words.h"

#include <gtest/gtest.h>

#include <set>

namespace wetfront::test {
namespace {

template <class E>
void expect_a_word_for_each() {
    std::set<std::string> words;
    for (const auto& entry : EnumNames<E>::all) {
        const auto word = in_english(label_of(entry.value), UnitSystem::si);
        EXPECT_FALSE(word.empty()) << entry.name;
        words.insert(word);
    }
    EXPECT_EQ(words.size(), EnumNames<E>::all.size()) << "two share a word";
}

TEST(WordsTest, every_name_has_a_word_of_its_own) {
    expect_a_word_for_each<TimingKind>();
    expect_a_word_for_each<NotUsed>();
    expect_a_word_for_each<StartedBy>();
    expect_a_word_for_each<PumpEnd>();
    expect_a_word_for_each<TimerKind>();
    expect_a_word_for_each<SensorKind>();
    expect_a_word_for_each<SensorPlace>();
}

TEST(WordsTest, every_time_has_a_method_of_its_own) {
    std::set<std::string> methods;
    for (const auto& entry : EnumNames<TimingKind>::all) {
        methods.insert(in_english(method_of(entry.value), UnitSystem::si));
    }
    EXPECT_EQ(methods.size(), EnumNames<TimingKind>::all.size());
    EXPECT_FALSE(methods.contains(""));
}

TEST(WordsTest, a_spread_says_where_it_comes_from) {
    EXPECT_EQ(in_english(label_of(SpreadFrom::readings), UnitSystem::si), "these readings");
    EXPECT_EQ(in_english(label_of(SpreadFrom::pooled), UnitSystem::si), "like readings of this visit");
    EXPECT_EQ(in_english(label_of(SpreadFrom::assumed), UnitSystem::si), "assumed");
}

}  // namespace
}  // namespace wetfront::test
