// SPDX-License-Identifier: Apache-2.0
#include "pad/face_velocity.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

std::vector<Velocity> speeds(const std::vector<double>& values) {
    std::vector<Velocity> result;
    for (const double value : values) {
        result.push_back(from_si<Velocity>(value));
    }
    return result;
}

TEST(FaceVelocityTest, fans_give_their_airflow_over_the_face) {
    // 90 m3/s through 60 m2.
    EXPECT_NEAR(in_si(face_velocity_from_fans(from_si<VolumeFlow>(90.0), from_si<Area>(60.0)).value()), 1.5,
                1e-15);
}

TEST(FaceVelocityTest, fans_or_faces_that_cannot_be_are_named) {
    const auto item = [](double flow, double area) {
        const auto got = face_velocity_from_fans(from_si<VolumeFlow>(flow), from_si<Area>(area));
        return got ? std::string{"taken"} : got.error().item;
    };
    for (const double bad : {0.0, -1.0, std::nan(""), std::numeric_limits<double>::infinity()}) {
        EXPECT_EQ(item(bad, 60.0), "airflow of the fans") << bad;
        EXPECT_EQ(item(90.0, bad), "wetted face of the pads") << bad;
    }
    EXPECT_EQ(item(600.0, 60.0), "taken");
    EXPECT_EQ(item(601.0, 60.0), "airflow of the fans over the wetted face of the pads");
}

TEST(FaceVelocityTest, points_give_mean_and_spread_worked_out_by_hand) {
    // 1.2, 1.4, 1.5, 1.6, 1.8: mean 1.5; squares 0.09 + 0.01 + 0 + 0.01 + 0.09 = 0.2, over 4 0.05;
    // s = 0.2236068, s / mean = 0.1490712, s / sqrt 5 = 0.1. k for 4 degrees of freedom 2.776445.
    const auto got = face_velocity_from_points(speeds({1.6, 1.2, 1.8, 1.4, 1.5})).value();
    EXPECT_EQ(got.points, 5);
    EXPECT_NEAR(in_si(got.mean), 1.5, 1e-15);
    EXPECT_EQ(in_si(got.lowest), 1.2);
    EXPECT_EQ(in_si(got.highest), 1.8);
    EXPECT_NEAR(in_si(got.standard_deviation.value()), 0.2236068, 1e-7);
    EXPECT_NEAR(in_si(got.variation.value()), 0.1490712, 1e-7);
    EXPECT_NEAR(in_si(got.standard.value()), 0.1, 1e-12);
    EXPECT_NEAR(in_si(got.expanded.value()), 0.2776445, 1e-6);
    EXPECT_TRUE(got.firm);
}

// Half a unit of the last digit printed.
double printed_to(const std::string& cell) {
    const auto point = cell.find('.');
    const auto decimals = point == std::string::npos ? 0 : cell.size() - point - 1;
    return 0.5 * std::pow(10.0, -static_cast<double>(decimals)) * (1.0 + 1e-9);
}

TEST(FaceVelocityTest, the_coverage_factor_is_that_of_the_published_table) {
    test::OutsideCheck check{"coverage factor of a mean air speed",
                             "GUM JCGM 100:2008 Table G.2, as transcribed publicly, second hand"};
    for (const auto& row : test::data_rows("students_t.csv")) {
        // The table's whole degrees of freedom; other rows of the file are no means of points.
        if (row.at(0) != "95" || row.at(1).find_first_not_of("0123456789") != std::string::npos ||
            row.at(2).size() > 5) {
            continue;
        }
        const auto points = static_cast<std::size_t>(test::cell_number(row.at(1))) + 1;
        std::vector<double> values(points, 1.5);
        values.back() = 1.6;
        const auto got = face_velocity_from_points(speeds(values)).value();
        check.near(row.at(1) + " degrees of freedom", got.coverage_factor.value(),
                   test::cell_number(row.at(2)), printed_to(row.at(2)));
    }
}

TEST(FaceVelocityTest, fewer_than_five_points_give_a_mean_that_is_not_firm) {
    EXPECT_FALSE(face_velocity_from_points(speeds({1.2, 1.4, 1.5, 1.6})).value().firm);
    EXPECT_TRUE(face_velocity_from_points(speeds({1.2, 1.4, 1.5, 1.6, 1.7})).value().firm);
}

TEST(FaceVelocityTest, a_single_point_has_no_spread) {
    const auto got = face_velocity_from_points(speeds({1.5})).value();
    EXPECT_EQ(in_si(got.mean), 1.5);
    EXPECT_EQ(got.points, 1);
    EXPECT_FALSE(got.firm);
    EXPECT_FALSE(got.standard_deviation || got.variation || got.standard || got.coverage_factor ||
                 got.expanded);
}

TEST(FaceVelocityTest, equal_points_have_no_spread_but_say_so_in_numbers) {
    const auto got = face_velocity_from_points(speeds({1.5, 1.5, 1.5, 1.5, 1.5})).value();
    EXPECT_EQ(in_si(got.standard_deviation.value()), 0.0);
    EXPECT_EQ(in_si(got.expanded.value()), 0.0);
}

TEST(FaceVelocityTest, speeds_as_far_apart_as_published_along_one_pad_are_taken) {
    // 150 and 600 ft/min: tests/data/pad_and_practice.csv, PAD-4.
    const auto got = face_velocity_from_points(speeds({0.762, 1.2, 1.8, 2.4, 3.048})).value();
    EXPECT_EQ(in_si(got.lowest), 0.762);
    EXPECT_EQ(in_si(got.highest), 3.048);
    EXPECT_GT(in_si(got.variation.value()), 0.4);
}

TEST(FaceVelocityTest, a_dead_patch_counts_but_a_pad_without_air_does_not) {
    EXPECT_NEAR(in_si(face_velocity_from_points(speeds({0.0, 1.0, 2.0})).value().mean), 1.0, 1e-15);
    const auto still = face_velocity_from_points(speeds({0.0, 0.0}));
    ASSERT_FALSE(still);
    EXPECT_EQ(still.error().text(),
              "air speeds at the pad face: 'all 0': at least one above 0: fans running");
}

TEST(FaceVelocityTest, a_point_that_cannot_be_is_named_by_its_place) {
    for (const double bad : {-0.1, 10.1, std::nan(""), std::numeric_limits<double>::infinity()}) {
        const auto got = face_velocity_from_points(speeds({1.5, 1.6, bad}));
        ASSERT_FALSE(got) << bad;
        EXPECT_EQ(got.error().item, "air speed at point 3") << bad;
        EXPECT_EQ(got.error().accepted, "0 to 10 m/s (0 to 1969 ft/min)");
    }
    const auto none = face_velocity_from_points({});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().read, "none");
}

}  // namespace
}  // namespace wetfront
