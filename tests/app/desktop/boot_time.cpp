// SPDX-License-Identifier: Apache-2.0
#include <cstdio>
#include <ctime>

// Prints CLOCK_BOOTTIME in nanoseconds: what a script of real input is timed with.
int main() {
    std::timespec now{};
    clock_gettime(CLOCK_BOOTTIME, &now);
    std::printf("%lld\n", now.tv_sec * 1'000'000'000LL + now.tv_nsec);
}
