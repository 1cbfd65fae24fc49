// SPDX-License-Identifier: Apache-2.0
#include "desk.h"

namespace wetfront::ui {
namespace {

class ConditionsViewModelTest : public Desk {
protected:
    [[nodiscard]] ConditionsViewModel& conditions() { return *visit_.conditions(); }
    [[nodiscard]] bool complete() { return visit_.steps()->at(Step::conditions).complete; }

    static QString enter(FormModel* form, const char* label, const char* text) {
        for (int i = 0; i < form->count(); ++i) {
            if (form->data(form->index(i), FormModel::LabelRole).toString() == QLatin1String(label)) {
                return form->enter(i, QString::fromUtf8(text));
            }
        }
        ADD_FAILURE() << "no line is called " << label;
        return {};
    }
    QString enter_air(const char* label, const char* text) { return enter(conditions().air(), label, text); }

    static FormModel* form(PartsModel* parts, int row, PartsModel::Role role) {
        return parts->data(parts->index(row), role).value<FormModel*>();
    }
    static QString results(PartsModel* parts, int row) {
        return parts->data(parts->index(row), PartsModel::ResultsRole).toStringList().join(u'\n');
    }
    void enter_speeds(const std::vector<const char*>& speeds) {
        auto* points = form(conditions().atBanks(), 0, PartsModel::MoreRole);
        for (std::size_t i = 0; i < speeds.size(); ++i) {
            const auto label = "Point " + std::to_string(i + 1) + ": Air speed at the pad face";
            EXPECT_EQ(enter(points, label.c_str(), speeds[i]), QString{});
        }
    }
    void enter_drawdown() {
        auto* flow = form(conditions().flows(), 0, PartsModel::MoreRole);
        ASSERT_EQ(flow->data(flow->index(0), FormModel::KeyRole), QStringLiteral("drawdown_fall"));
        EXPECT_EQ(flow->enter(0, QStringLiteral("3in")), QString{});
        EXPECT_EQ(flow->enter(1, QStringLiteral("60s")), QString{});
    }
    QString set_sump_area(const char* text) {
        auto* more = form(visit_.house()->pumps(), 0, PartsModel::MoreRole);
        return enter(more, "Water surface of the sump", text);
    }

    SheetPaper paper_{[](const SheetContent&, const Formatter&, Paper) { return std::vector<QImage>{}; },
                      {},
                      {},
                      {},
                      {},
                      {}};
    VisitViewModel visit_{context_, presses_, paper_, file_, {}, nullptr};
};

struct HumidityInput {
    const char* name;
    const char* label;
    const char* text;
};

class HumidityInputTest : public ConditionsViewModelTest,
                          public testing::WithParamInterface<HumidityInput> {};

TEST_P(HumidityInputTest, any_of_three_ways_to_tell_the_humidity_completes_the_step) {
    EXPECT_EQ(enter_air("Outside temperature", "95degF"), QString{});
    EXPECT_FALSE(complete());
    EXPECT_EQ(enter_air(GetParam().label, GetParam().text), QString{});
    EXPECT_TRUE(complete());
    EXPECT_EQ(enter_air(GetParam().label, ""), QString{});
    EXPECT_FALSE(complete());
}

INSTANTIATE_TEST_SUITE_P(Ways, HumidityInputTest,
                         testing::Values(HumidityInput{"humidity", "Outside relative humidity", "40%"},
                                         HumidityInput{"wet_bulb", "Outside wet bulb", "75degF"},
                                         HumidityInput{"dew_point", "Outside dew point", "67degF"}),
                         [](const auto& way) { return way.param.name; });

TEST_F(ConditionsViewModelTest, a_wet_bulb_or_dew_point_above_the_outside_temperature_is_refused) {
    enter_air("Outside temperature", "95degF");
    for (const char* label : {"Outside wet bulb", "Outside dew point"}) {
        const QString problem = enter_air(label, "96degF");
        EXPECT_TRUE(problem.contains(QStringLiteral("96degF")) && problem.contains(QStringLiteral("95degF")))
            << problem.toStdString();
    }
    EXPECT_FALSE(stored().conditions.outside_wet_bulb || stored().conditions.outside_dew_point);
}

// By hand: (300 + 325 + 370 + 355 + 340) / 5 = 338.
TEST_F(ConditionsViewModelTest, five_points_give_a_mean_with_its_spread) {
    enter_speeds({"300ft/min", "325ft/min", "370ft/min", "355ft/min", "340ft/min"});
    const QString told = results(conditions().atBanks(), 0);
    for (const char* wanted : {"5 points", "338 ft/min ±", "300 ft/min", "370 ft/min"}) {
        EXPECT_TRUE(told.contains(QString::fromUtf8(wanted))) << wanted << " in: " << told.toStdString();
    }
    EXPECT_FALSE(told.contains(QStringLiteral("Too few"))) << told.toStdString();
    ASSERT_EQ(stored().conditions.at_banks.size(), 1U);
    EXPECT_EQ(stored().conditions.at_banks.front().bank, file_.house.banks.front().id);
    EXPECT_EQ(stored().conditions.at_banks.front().face_points.size(), 5U);
}

TEST_F(ConditionsViewModelTest, fewer_than_five_points_are_said_to_be_too_few) {
    enter_speeds({"300ft/min", "340ft/min"});
    EXPECT_TRUE(results(conditions().atBanks(), 0).contains(QStringLiteral("Too few")))
        << results(conditions().atBanks(), 0).toStdString();
    EXPECT_FALSE(results(conditions().atBanks(), 1).contains(QStringLiteral("points")))
        << "points of one bank showed at another";
}

// By hand: 10 ft2 x 0.25 ft / 1 min = 2.5 ft3/min, and 1 ft3 is 7.48052 US gal: 18.7 gpm.
TEST_F(ConditionsViewModelTest, a_drawdown_tells_the_flow_with_its_uncertainty) {
    ASSERT_EQ(set_sump_area("10ft2"), QString{});
    enter_drawdown();
    const QString told = results(conditions().flows(), 0);
    EXPECT_TRUE(told.contains(QString::fromUtf8("18.7 gpm ±"))) << told.toStdString();
}

TEST_F(ConditionsViewModelTest, of_two_measured_flows_it_is_said_which_one_is_used) {
    ASSERT_EQ(set_sump_area("10ft2"), QString{});
    enter_drawdown();
    EXPECT_FALSE(results(conditions().flows(), 0).contains(QStringLiteral("used")));
    EXPECT_EQ(enter(form(conditions().flows(), 0, PartsModel::FormRole), "Measured flow", "20gpm"),
              QString{});
    const QString told = results(conditions().flows(), 0);
    EXPECT_TRUE(told.contains(QStringLiteral("20 gpm, as measured; this one is used.")))
        << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("18.7 gpm"))) << told.toStdString();
}

TEST_F(ConditionsViewModelTest, a_drawdown_without_the_sumps_water_surface_says_what_is_missing) {
    ASSERT_EQ(set_sump_area(""), QString{});
    enter_drawdown();
    const QString told = results(conditions().flows(), 0);
    EXPECT_TRUE(told.contains(QStringLiteral("water surface"))) << told.toStdString();
    EXPECT_FALSE(told.contains(QStringLiteral("gpm"))) << told.toStdString();
}

TEST_F(ConditionsViewModelTest, looking_at_the_forms_stores_nothing) {
    enter_air("Outside temperature", "95degF");
    EXPECT_TRUE(stored().conditions.flows.empty());
    EXPECT_TRUE(stored().conditions.at_banks.empty());
    EXPECT_TRUE(visit_.file().visit.conditions.flows.empty());
}

TEST_F(ConditionsViewModelTest, the_air_picture_holds_the_states_that_are_known_in_the_readers_units) {
    EXPECT_TRUE(conditions().airPicture().isEmpty());
    EXPECT_EQ(conditions().airWords().size(), 1) << "it is not said what is missing";
    enter_air("Outside temperature", "95degF");
    enter_air("Outside relative humidity", "40%");
    auto picture = conditions().airPicture();
    EXPECT_NEAR(picture.value("outside").toMap().value("temperature").toDouble(), 95.0, 1e-9);
    EXPECT_FALSE(picture.contains("behindPad") || picture.contains("house"));
    enter_air("Temperature behind the pad", "80degF");
    enter_air("House temperature", "84degF");
    enter_air("House relative humidity", "70%");
    picture = conditions().airPicture();
    EXPECT_NEAR(picture.value("behindPad").toMap().value("temperature").toDouble(), 80.0, 1e-9);
    EXPECT_NEAR(picture.value("house").toMap().value("temperature").toDouble(), 84.0, 1e-9);
    formatter_.set_units(UnitSystem::si);
    // 95 degF are 35 degC exactly.
    EXPECT_NEAR(conditions().airPicture().value("outside").toMap().value("temperature").toDouble(), 35.0,
                1e-9);
}

// A pad takes up sensible heat as latent: the air behind it holds more water than the air outside.
TEST_F(ConditionsViewModelTest, air_behind_the_pad_lies_on_the_wet_bulb_line) {
    enter_air("Outside temperature", "95degF");
    enter_air("Outside relative humidity", "40%");
    enter_air("Temperature behind the pad", "80degF");
    const auto picture = conditions().airPicture();
    const double outside = picture.value("outside").toMap().value("water").toDouble();
    const double behind = picture.value("behindPad").toMap().value("water").toDouble();
    EXPECT_GT(behind, outside);
    const auto curves = picture.value("curves").toList();
    ASSERT_FALSE(curves.isEmpty());
    const auto line = curves.back().toMap();
    ASSERT_EQ(line.value("kind"), QStringLiteral("wetBulb"));
    const auto points = line.value("points").toList();
    bool between = false;
    for (int i = 0; i + 1 < points.size(); ++i) {
        const auto warm = points[i].toPointF();
        const auto cool = points[i + 1].toPointF();
        if (cool.x() <= 80.0 && 80.0 <= warm.x()) {
            between = warm.y() <= behind && behind <= cool.y();
        }
    }
    EXPECT_TRUE(between) << "the line does not pass through the air behind the pad";
}

TEST_F(ConditionsViewModelTest, air_behind_the_pad_colder_than_the_wet_bulb_is_called_a_reading_error) {
    enter_air("Outside temperature", "95degF");
    enter_air("Outside relative humidity", "40%");
    enter_air("Temperature behind the pad", "60degF");
    EXPECT_FALSE(conditions().airPicture().contains("behindPad"));
    EXPECT_TRUE(conditions().airWords().join(u' ').contains(QStringLiteral("thermometers")));
}

}  // namespace
}  // namespace wetfront::ui
