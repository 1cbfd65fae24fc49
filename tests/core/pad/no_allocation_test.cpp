// SPDX-License-Identifier: Apache-2.0
// Replaces operator new for this whole program, to count what is taken from the heap.
#include <gtest/gtest.h>

#include <array>
#include <atomic>
#include <cstdlib>
#include <new>
#include <vector>

#include "pad/face_velocity.h"
#include "pad/measured_pad.h"
#include "pad/pressure_drop.h"
#include "pad/wet_pad.h"
#include "pad/wetting_column.h"

namespace {

std::atomic<long> allocations{0};

void* counted(std::size_t size) {
    ++allocations;
    void* block = std::malloc(size > 0 ? size : 1);
    if (block == nullptr) {
        throw std::bad_alloc{};
    }
    return block;
}

}  // namespace

// The forms that the standard library's other ones end in.
void* operator new(std::size_t size) {
    return counted(size);
}
void* operator new[](std::size_t size) {
    return counted(size);
}
void operator delete(void* block) noexcept {
    std::free(block);
}
void operator delete[](void* block) noexcept {
    std::free(block);
}
void operator delete(void* block, std::size_t) noexcept {
    std::free(block);
}
void operator delete[](void* block, std::size_t) noexcept {
    std::free(block);
}

namespace wetfront {
namespace {

using namespace literals;

template <class Work>
long allocations_in(Work work) {
    const long before = allocations;
    work();
    return allocations - before;
}

TEST(NoAllocationTest, the_count_sees_an_allocation) {
    std::vector<double> kept;
    EXPECT_EQ(allocations_in([&] { kept.assign(100, 1.0); }), 1);
}

TEST(NoAllocationTest, cooling_through_a_pad_takes_nothing_from_the_heap) {
    double sum = 0.0;
    EXPECT_EQ(allocations_in([&] {
                  for (double t = 20.0; t < 45.0; t += 1.0) {
                      for (double humidity = 0.05; humidity < 0.8; humidity += 0.05) {
                          const auto outside =
                              air_from_humidity(celsius(t), from_si<Fraction>(humidity), 101325_Pa);
                          const auto e = expected_effectiveness(1.5_mps, 150_mm);
                          sum += in_si(air_behind_pad(outside.value(), e.value()).value().enthalpy);
                          sum += in_si(evaporation(outside.value(), e.value(), 1.5_mps).value());
                          sum += evaporation_ratio(outside.value(), outside.value(), e.value()).value();
                      }
                  }
              }),
              0);
    EXPECT_GT(sum, 0.0);
}

TEST(NoAllocationTest, measured_effectiveness_takes_nothing_from_the_heap) {
    const auto outside = air_from_humidity(35_degC, 40_percent, 101325_Pa).value();
    double sum = 0.0;
    EXPECT_EQ(allocations_in([&] {
                  for (double t = 26.0; t < 33.0; t += 0.1) {
                      sum += in_si(measured_effectiveness(outside, celsius(t)).value());
                      for (const auto from : {HumidityFrom::hygrometer, HumidityFrom::wet_bulb_thermometer}) {
                          const auto got = effectiveness_with_uncertainty(outside, celsius(t), from);
                          sum += in_si(got.value().expanded);
                          sum += in_si(compare_effectiveness(got.value(), 70_percent).value().expanded);
                      }
                  }
              }),
              0);
    EXPECT_GT(sum, 0.0);
}

TEST(NoAllocationTest, face_velocity_and_pressure_drop_take_nothing_from_the_heap) {
    const std::array points{1.2_mps, 1.4_mps, 1.5_mps, 1.6_mps, 1.8_mps};
    double sum = 0.0;
    EXPECT_EQ(allocations_in([&] {
                  sum += in_si(face_velocity_from_points(points).value().expanded.value());
                  sum +=
                      in_si(face_velocity_from_fans(from_si<VolumeFlow>(90.0), from_si<Area>(60.0)).value());
                  const auto published = published_pressure_drop(1.25_mps, 150_mm).value();
                  sum += compare_pressure_drop(from_si<PressureDifference>(8.0), published).value() ==
                                 PressureDropVerdict::within
                             ? 1.0
                             : 0.0;
              }),
              0);
    EXPECT_GT(sum, 1.0);
}

TEST(NoAllocationTest, a_wetting_column_takes_nothing_from_the_heap) {
    double deficit = 1.0;
    EXPECT_EQ(allocations_in([&] {
                  const auto rates = rates_from_timings(120_s, 1200_s, true).value();
                  for (int cycle = 0; cycle < 1000; ++cycle) {
                      deficit = deficit_after_supply(rates, deficit, 60_s);
                      deficit = deficit_after_drying(rates, deficit, 240_s);
                      deficit += 1e-9 * in_seconds(time_to_drip(rates, deficit).value());
                  }
                  deficit += evaporated_share_from_wet_start(300_s, 60_s, 45_s).value();
              }),
              0);
    EXPECT_GT(deficit, 0.0);
}

}  // namespace
}  // namespace wetfront
