// SPDX-License-Identifier: Apache-2.0
#include "records/setting_template.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "records/file_shape.h"
#include "records/record_text.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;

constexpr std::array all_kinds{TimerKind::trimmed, TimerKind::fixed_interval, TimerKind::on_demand};

std::string why(const Result<void>& result) {
    return result ? "accepted" : result.error().text();
}

/// Whole templates with anything in them that the checks allow. Invented.
class TemplateMaker {
public:
    explicit TemplateMaker(unsigned seed) : random_{seed} {}

    SettingTemplate make() {
        auto made = generic_template(all_kinds[below(3)]);
        made.id = Id{"t-" + std::to_string(random_())};
        made.name = texts_[below(texts_.size())] + "x";
        made.note = texts_[below(texts_.size())];
        made.counts_from = below(2) == 0 ? CountsFrom::pump_start : CountsFrom::full_header;
        if (made.trim_rows) {
            made.trim_rows = static_cast<int>(1 + below(4));
        }
        made.dependencies.clear();
        add_evidence(made);
        std::shuffle(made.settings.begin(), made.settings.end(), random_);
        drop_some(made);
        for (auto& setting : made.settings) {
            vary(setting);
        }
        for (const auto& dependency : EnumNames<SettingDependency>::all) {
            made.dependencies.push_back(dependency.value);
            if (below(2) == 0 || !check_template(made, "")) {
                made.dependencies.pop_back();
            }
        }
        return made;
    }

private:
    std::size_t below(std::size_t count) { return random_() % count; }

    void add_evidence(SettingTemplate& made) {
        for (const auto key :
             {TemplateKey::entered_fill, TemplateKey::entered_wet_through, TemplateKey::shown_on_time}) {
            made.settings.push_back({key, "x", "s", 1.0, 0.0, 900.0, ""});
        }
    }

    void drop_some(SettingTemplate& made) {
        const auto whole = made.settings;
        for (const auto& setting : whole) {
            auto less = made;
            std::erase_if(less.settings,
                          [&](const TemplateSetting& each) { return each.setting == setting.setting; });
            if (below(3) == 0 && check_template(less, "")) {
                made = less;
            }
        }
    }

    void vary(TemplateSetting& setting) {
        setting.label = texts_[below(texts_.size())] + std::to_string(below(100));
        setting.note = texts_[below(texts_.size())];
        const auto units = units_of(setting.setting);
        if (units.size() == 3) {  // a duration: the same numbers pass in seconds and minutes
            setting.unit = units[below(2)];
            setting.most = 60.0;
            setting.least =
                setting.setting == TemplateKey::trim_change ? -60.0 : static_cast<double>(below(9));
            setting.resolution = 0.25 * static_cast<double>(1 + below(40));
        } else if (units.size() == 2) {
            setting.unit = units[below(2)];
            setting.least = static_cast<double>(below(10));
            setting.most = *setting.least + 30.0;
            setting.resolution = 0.1 * static_cast<double>(1 + below(100));
        }
    }

    std::mt19937 random_;
    std::vector<std::string> texts_{"",        "Marche ", "pl\xC3\xA1stico ", "{[\"%1\"]} ", "a, b; c \\ ",
                                    "Aus/Ein "};
};

TEST(SettingTemplateTest, a_template_file_reads_back_as_what_was_written) {
    for (unsigned seed = 0; seed < 300; ++seed) {
        const auto made = TemplateMaker{seed}.make();
        const auto text = template_file_text(made);
        const auto back = parse_template_file(text);
        ASSERT_TRUE(back) << "seed " << seed << ": " << back.error().text() << "\n" << text;
        ASSERT_EQ(back.value(), made) << "seed " << seed << "\n" << text;
        EXPECT_EQ(template_file_text(back.value()), text);
        const auto line = template_text(made);
        EXPECT_EQ(line.find('\n'), std::string::npos) << line;
        const auto from_store = parse_template(line);
        ASSERT_TRUE(from_store) << from_store.error().text();
        EXPECT_EQ(from_store.value(), made);
    }
}

TEST(SettingTemplateTest, the_three_plain_ones_are_whole_and_speak_in_the_trades_words) {
    for (const auto kind : all_kinds) {
        const auto plain = generic_template(kind);
        EXPECT_EQ(plain.kind, kind);
        EXPECT_TRUE(check_template(plain, "")) << why(check_template(plain, ""));
        for (const auto& setting : plain.settings) {
            EXPECT_EQ(setting.label, label_of(setting.setting).text);
        }
    }
}

TEST(SettingTemplateTest, a_template_that_is_still_being_entered_reads_back_from_the_store) {
    SettingTemplate begun;
    begun.id = Id{"t"};
    begun.settings.emplace_back().setting = TemplateKey::rinse_length;
    const auto back = parse_template(template_text(begun));
    ASSERT_TRUE(back) << back.error().text();
    EXPECT_EQ(back.value(), begun);
}

struct Wrong {
    const char* item;
    const char* accepted;
    std::function<void(Json&)> break_it;
};

/// The settings of the plain trimmed template: 0 target, 1 start temperature, 4 pad hours from, 6 period, 7
/// base on-time, 8 ceiling, 9 degrees above target.
Json& setting(Json& file, std::size_t index) {
    return file["template"]["settings"][index];
}

TEST(SettingTemplateTest, bad_input_is_refused_with_its_item_and_limit) {
    const std::vector<Wrong> rows{
        {"template.name", "a name", [](Json& f) { f["template"]["name"] = ""; }},
        {"template.settings", "needs period, which is missing",
         [](Json& f) { f["template"]["settings"].erase(6); }},
        {"template.settings", "needs trim_change, which is missing",
         [](Json& f) { f["template"]["settings"].erase(10); }},
        {"template.settings", "needs on_time_ceiling", [](Json& f) { f["template"]["settings"].erase(8); }},
        {"template.settings", "pad_hours_from is missing",
         [](Json& f) { f["template"]["settings"].erase(4); }},
        {"template.settings[6].least", "below most, here 60", [](Json& f) { setting(f, 6)["least"] = 61.0; }},
        {"template.settings[6].least", "below most, here 60", [](Json& f) { setting(f, 6)["least"] = 60.0; }},
        {"template.settings[6].least", "within 0 and 1440 min",
         [](Json& f) { setting(f, 6)["least"] = -1.0; }},
        {"template.settings[6].most", "within 0 and 1440 min",
         [](Json& f) { setting(f, 6)["most"] = 1441.0; }},
        {"template.settings[1].most", "within -40 and 140 degF",
         [](Json& f) { setting(f, 1)["most"] = 141.0; }},
        {"template.settings[4].most", "within 0 and 1439 min",
         [](Json& f) { setting(f, 4)["most"] = 1440.0; }},
        {"template.settings[6].resolution", "must be 0.001 to",
         [](Json& f) { setting(f, 6)["resolution"] = 0; }},
        {"template.settings[6].resolution", "must be 0.001 to",
         [](Json& f) { setting(f, 6)["resolution"] = -1; }},
        {"template.settings[6].resolution", "at most the range, here 59",
         [](Json& f) { setting(f, 6)["resolution"] = 59.5; }},
        {"template.settings[6].resolution", "missing", [](Json& f) { setting(f, 6).erase("resolution"); }},
        {"template.settings[6].most", "missing", [](Json& f) { setting(f, 6).erase("most"); }},
        {"template.settings[6].resolution", "a plain number",
         [](Json& f) { setting(f, 6)["resolution"] = "1 min"; }},
        {"template.settings[6].unit", "write s, min or h", [](Json& f) { setting(f, 6)["unit"] = "degF"; }},
        {"template.settings[6].unit", "write s, min or h", [](Json& f) { setting(f, 6).erase("unit"); }},
        {"template.settings[1].unit", "write degC or degF", [](Json& f) { setting(f, 1)["unit"] = "K"; }},
        {"template.settings[3].unit", "write %", [](Json& f) { setting(f, 3)["unit"] = "s"; }},
        {"template.settings[4].unit", "a time of day", [](Json& f) { setting(f, 4)["unit"] = "min"; }},
        {"template.settings[6].label", "1 to 60 characters", [](Json& f) { setting(f, 6)["label"] = ""; }},
        {"template.settings[6].label", "1 to 60 characters", [](Json& f) { setting(f, 6)["label"] = "   "; }},
        {"template.settings[6].label", "missing", [](Json& f) { setting(f, 6).erase("label"); }},
        {"template.settings[6].label", "at most 60 characters",
         [](Json& f) { setting(f, 6)["label"] = std::string(200, 'x'); }},
        {"template.settings[6].label", "at most 60 characters",
         [](Json& f) { setting(f, 6)["label"] = std::string(61, 'x'); }},
        {"template.settings[7].setting", "twice", [](Json& f) { setting(f, 7) = setting(f, 6); }},
        {"template.settings[6].setting", "\"period\"", [](Json& f) { setting(f, 6)["setting"] = "dance"; }},
        {"template.trim_rows", "a whole number is expected here, 1 to 4",
         [](Json& f) { f["template"]["trim_rows"] = 0; }},
        {"template.trim_rows", "a whole number is expected here, 1 to 4",
         [](Json& f) { f["template"]["trim_rows"] = 5; }},
        {"template.trim_rows", "a whole number", [](Json& f) { f["template"]["trim_rows"] = 2.5; }},
        {"template.trim_rows", "1 to 4 trim rows", [](Json& f) { f["template"].erase("trim_rows"); }},
        {"template.dependencies[3]", "twice",
         [](Json& f) { f["template"]["dependencies"].push_back("ceiling at least base"); }},
        {"template.dependencies[0]", "leave no values",
         [](Json& f) {
             setting(f, 8)["most"] = 90;
             setting(f, 7)["least"] = 100;
         }},
        {"template.dependencies[1]", "leave no values",
         [](Json& f) {
             setting(f, 11)["most"] = 5;
             setting(f, 6)["least"] = 6;
         }},
        {"template.dependencies[2]", "leave no values", [](Json& f) { setting(f, 9)["resolution"] = 10; }},
        {"template.dependencies[1]", "lacks", [](Json& f) { f["template"]["settings"].erase(11); }},
        {"template.kind", "\"trimmed\"", [](Json& f) { f["template"]["kind"] = "sometimes"; }},
        {"template.settings[8].setting", "no such setting",
         [](Json& f) { f["template"]["kind"] = "fixed interval"; }},
        {"template.settings[6].setting", "no such setting",
         [](Json& f) { f["template"]["kind"] = "on demand"; }},
        {"template.colour", "unknown key", [](Json& f) { f["template"]["colour"] = "red"; }},
        {"template.settings[0].colour", "unknown key", [](Json& f) { setting(f, 0)["colour"] = "red"; }},
        {"maker", "unknown key", [](Json& f) { f["maker"] = "nobody"; }},
        {"format_version", "missing", [](Json& f) { f.erase("format_version"); }},
        {"format_version", "a whole number is expected here, 1", [](Json& f) { f["format_version"] = 0; }},
        {"format_version", "a whole number is expected here, 1", [](Json& f) { f["format_version"] = "1"; }},
        {"template", "missing", [](Json& f) { f.erase("template"); }},
    };
    const auto whole = Json::parse(template_file_text(generic_template(TimerKind::trimmed)));
    for (const auto& row : rows) {
        auto file = whole;
        row.break_it(file);
        const auto result = parse_template_file(file.dump());
        ASSERT_FALSE(result) << row.item << " was accepted: " << row.accepted;
        EXPECT_EQ(result.error().item, row.item) << result.error().text();
        EXPECT_THAT(result.error().accepted, HasSubstr(row.accepted)) << result.error().text();
    }
}

TEST(SettingTemplateTest, a_file_of_a_later_version_is_called_that_whatever_else_is_in_it) {
    const auto result = parse_template_file(R"({"format_version": 2, "shape": {"new": true}})");
    ASSERT_FALSE(result);
    EXPECT_EQ(
        result.error().text(),
        "format_version: '2': this template file was written by a later version of the program, and this "
        "one reads format 1; update the program");
}

TEST(SettingTemplateTest, limits_themselves_are_accepted) {
    auto plain = generic_template(TimerKind::trimmed);
    auto& period = plain.settings[6];
    period.label = std::string(60, 'x');
    period.unit = "h";
    period.least = 0.0;
    period.most = 24.0;
    period.resolution = 24.0;
    for (const int rows : {1, 4}) {
        plain.trim_rows = rows;
        EXPECT_TRUE(check_template(plain, "")) << why(check_template(plain, ""));
    }
}

TEST(SettingTemplateTest, a_timer_that_is_not_trimmed_has_no_trim_rows) {
    auto plain = generic_template(TimerKind::fixed_interval);
    plain.trim_rows = 1;
    EXPECT_THAT(why(check_template(plain, "")), HasSubstr("only a trimmed timer has trim rows"));
}

TEST(SettingTemplateTest, an_on_demand_timer_needs_what_calls_for_it) {
    auto plain = generic_template(TimerKind::on_demand);
    plain.settings.erase(plain.settings.begin());
    EXPECT_THAT(why(check_template(plain, "")), HasSubstr("needs start_temperature"));
}

TEST(SettingTemplateTest, every_setting_has_a_name_a_kind_and_units_of_that_kind) {
    for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
        EXPECT_FALSE(label_of(key).empty()) << name;
        for (const auto unit : units_of(key)) {
            EXPECT_NE(unit_of({key, "x", std::string{unit}, 1.0, 0.0, 1.0, ""}), nullptr) << name << unit;
        }
        EXPECT_EQ(is_time_of_day(key), units_of(key).empty()) << name;
        EXPECT_EQ(unit_of({key, "x", "kg", 1.0, 0.0, 1.0, ""}), nullptr) << name;
    }
}

TEST(SettingTemplateTest, settings_stand_in_the_four_groups_and_evidence_in_none) {
    EXPECT_EQ(group_of(TemplateKey::target), SettingGroup::when_pads_may_run);
    EXPECT_EQ(group_of(TemplateKey::base_on_time), SettingGroup::how_long);
    EXPECT_EQ(group_of(TemplateKey::trim_change), SettingGroup::how_it_adapts);
    EXPECT_EQ(group_of(TemplateKey::rinse_at), SettingGroup::rinse);
    EXPECT_EQ(group_of(TemplateKey::shown_on_time), std::nullopt);
}

TEST(SettingTemplateTest, what_a_timer_holds_is_found_by_key_and_row) {
    TimerSettings settings;
    settings.trim_rows.resize(2);
    settings.trim_rows[1].change = Entered<Duration>::parse("15 s", "test").value();
    settings.target = Entered<Temperature>::parse("300 K", "test").value();
    settings.pad_hours_from = TimeOfDay{570};
    EXPECT_EQ(held(settings, TemplateKey::trim_change, 1)->si, 15.0);
    EXPECT_EQ(held(settings, TemplateKey::trim_change, 0), std::nullopt);
    EXPECT_EQ(held(settings, TemplateKey::trim_change, 2), std::nullopt);
    EXPECT_EQ(held(settings, TemplateKey::target)->si, 300.0);
    EXPECT_EQ(held(settings, TemplateKey::pad_hours_from), any(seconds(34'200.0), Scale::clock));
    EXPECT_EQ(held(settings, TemplateKey::shown_on_time), std::nullopt);
}

TEST(SettingTemplateTest, the_schema_has_every_key_and_the_limits) {
    const auto schema = Json::parse(template_schema_text());
    EXPECT_EQ(schema.at("required"), Json::array({"format_version", "template"}));
    const auto& described = schema.at("properties").at("template");
    EXPECT_EQ(described.at("properties").at("trim_rows").at("maximum"), 4);
    const auto& item = described.at("properties").at("settings").at("items");
    EXPECT_EQ(item.at("additionalProperties"), false);
    EXPECT_EQ(item.at("properties").at("label").at("maxLength"), 60);
    EXPECT_EQ(item.at("properties").at("setting").at("enum").size(), EnumNames<TemplateKey>::all.size());
    EXPECT_EQ(item.at("required"), Json::array({"setting", "label"}));
}

TEST(SettingTemplateTest, values_and_ranges_are_written_as_the_controller_does) {
    const auto made = generic_template(TimerKind::trimmed);
    const auto& start = *made.setting(TemplateKey::start_temperature);
    // 28.5 degC x 9/5 + 32 = 83.3 degF
    EXPECT_EQ(text_on(start, {Kind::temperature, 273.15 + 28.5}),
              "83.3 \xC2\xB0"
              "F");
    EXPECT_EQ(range_text(start),
              "60 \xC2\xB0"
              "F to 110 \xC2\xB0"
              "F");
    EXPECT_EQ(text_on(*made.setting(TemplateKey::period), any(seconds(450.0))), "7.5 min");
    EXPECT_EQ(text_on(*made.setting(TemplateKey::rinse_at), any(seconds(34'200.0))), "09:30");
    EXPECT_EQ(range_text(*made.setting(TemplateKey::rinse_at)), "00:00 to 23:45");
}

}  // namespace
}  // namespace wetfront::test
