// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>

#include "air/comfort.h"
#include "air/moist_air.h"

namespace {

std::atomic<long> allocations{0};

void* counted(std::size_t size) {
    ++allocations;
    void* memory = std::malloc(size == 0 ? 1 : size);
    if (memory == nullptr) {
        throw std::bad_alloc{};
    }
    return memory;
}

}  // namespace

// The program's own, so that each one is counted.
void* operator new(std::size_t size) {
    return counted(size);
}
void* operator new[](std::size_t size) {
    return counted(size);
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete[](void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t /*size*/) noexcept {
    std::free(memory);
}
void operator delete[](void* memory, std::size_t /*size*/) noexcept {
    std::free(memory);
}

namespace wetfront {
namespace {

using namespace literals;

template <class Work>
long allocations_of(Work work) {
    const long before = allocations;
    work();
    return allocations - before;
}

TEST(AllocationTest, the_counter_counts) {
    // A refusal has a text, and this one is long.
    EXPECT_GE(allocations_of([] { EXPECT_FALSE(air_from_wet_bulb(30_degC, 31_degC, 101325_Pa)); }), 1);
}

TEST(AllocationTest, no_state_of_air_allocates) {
    double sum = 0.0;
    EXPECT_EQ(allocations_of([&] {
                  for (int t = -40; t <= 80; ++t) {
                      const auto dry_bulb = celsius(t);
                      const auto air = air_from_humidity(dry_bulb, 40_percent, 101325_Pa);
                      const auto by_wet_bulb = air_from_wet_bulb(dry_bulb, air.value().wet_bulb, 101325_Pa);
                      const auto by_dew_point =
                          air_from_dew_point(dry_bulb, air.value().dew_point.value(), 101325_Pa);
                      const auto by_ratio =
                          air_from_humidity_ratio(dry_bulb, air.value().humidity_ratio, 101325_Pa);
                      sum += in_si(by_wet_bulb.value().density) + in_si(by_dew_point.value().density) +
                             in_si(by_ratio.value().density) + in_si(saturation_pressure(dry_bulb).value()) +
                             in_si(standard_pressure(300_m).value()) +
                             in_celsius(temperature_humidity_index(air.value()));
                  }
              }),
              0);
    EXPECT_GT(sum, 0.0);
}

TEST(AllocationTest, the_index_with_wind_does_not_allocate) {
    const auto air = air_from_humidity(37_degC, 40_percent, 101325_Pa).value();
    EXPECT_EQ(allocations_of([&] { EXPECT_TRUE(temperature_humidity_velocity_index(air, 0.5_mps)); }), 0);
}

}  // namespace
}  // namespace wetfront
