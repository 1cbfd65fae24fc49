// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "day/pad_columns.h"

namespace wetfront::test {
namespace {

// A pad as a grid of cells, height by length. The other extreme of how water comes down: a cell takes all
// that reaches it until it is full, and only then the one below gets any. (The columns of the model take
// water up over their whole height at once.) Each cell dries as the model's column does.
class PadGrid {
public:
    PadGrid(double a, double b, double c, double fill, int rows, int columns)
        : a_{a},
          b_{b},
          c_{c},
          fill_{fill},
          rows_{rows},
          columns_{columns},
          dry_(static_cast<std::size_t>(rows * columns), 1.0) {}

    // Supplied for `on` seconds from the start of the pump, then resting; mean wet share, and the largest
    // difference from another wet share that is asked for at each step.
    template <class Seen>
    double run(double on, double length, double step, Seen seen) {
        double sum = 0.0;
        for (double t = 0.0; t < length - 1e-9; t += step) {
            for (int x = 0; x < columns_; ++x) {
                const bool supplied = t < on && t >= fill_ * (x + 0.5) / columns_;
                double water = supplied ? a_ * rows_ * step : 0.0;  // in shares of what a cell holds
                for (int y = 0; y < rows_; ++y) {
                    double& d = dry_[static_cast<std::size_t>(x * rows_ + y)];
                    const double lost = b_ * step * phi(d);
                    const double taken = std::min(water, d + lost);
                    water -= taken;
                    d = std::min(1.0, d + lost - taken);
                }
            }
            const double share = wet_share();
            sum += share * step;
            seen(t + step, share);
        }
        return sum / length;
    }

private:
    double phi(double d) const { return d <= c_ ? 1.0 : (1.0 - d) / (1.0 - c_); }
    double wet_share() const {
        double sum = 0.0;
        for (const double d : dry_) {
            sum += phi(d);
        }
        return sum / static_cast<double>(dry_.size());
    }

    double a_;
    double b_;
    double c_;
    double fill_;
    int rows_;
    int columns_;
    std::vector<double> dry_;
};

struct GridDifference {
    double first_run = 0.0;   ///< largest, of the wet share while a dry pad is wetted
    double first_mean = 0.0;  ///< of its mean over the first period
    double later = 0.0;       ///< of the mean wet share over the last of 25 periods
};

GridDifference difference_of(double supply, double period, double on, double dry_out) {
    constexpr double c = 0.7;
    constexpr int columns = 10;
    const double b = c / dry_out;
    const double a = supply * b;
    DayBank bank;
    bank.holds = from_si<Mass>(1.0);
    bank.wetting = from_si<Rate>(a);
    bank.fill = 40_s;
    day_detail::PadColumns model{bank, columns};
    day_detail::DryingCurve drying;
    drying.turn_to({b, 0.0, 0.0}, 0.0, 0.0);
    day_detail::Deficits now;
    model.fill_with(1.0, now);
    PadGrid grid{a, b, c, 40.0, 20, columns};
    GridDifference difference;
    for (int i = 0; i < 25; ++i) {
        const double start = i * period;
        double mean = 0.0;
        double last = 0.0;
        const double grid_mean = grid.run(on, period, 0.5, [&](double t, double share) {
            day_detail::Deficits next;
            const bool running = t <= on + 1e-9;
            static_cast<void>(model.advance(now, next, start + last, start + t, drying,
                                            running ? start : day_detail::never));
            now = next;
            mean += model.wet_share(now) * (t - last);
            last = t;
            if (i == 0) {
                difference.first_run = std::max(difference.first_run, std::abs(share - model.wet_share(now)));
            }
        });
        const double off = std::abs(grid_mean - mean / period);
        if (i == 0) {
            difference.first_mean = off;
        }
        difference.later = off;
    }
    return difference;
}

// How far the wet share of the model may be from that of a real pad, which lies between the two extremes. The
// numbers stand in tests/README.md.
TEST(PadGridTest, the_models_wet_share_is_bounded_by_that_of_a_pad_that_is_wetted_from_the_top) {
    GridDifference worst;
    double wet_cycles = 0.0;
    for (const double supply : {3.0, 5.0, 10.0, 20.0}) {
        for (const double period : {300.0, 600.0}) {
            for (const double dry_out : {300.0, 600.0, 1200.0}) {
                for (const double share : {0.2, 0.3, 0.5}) {
                    const auto off = difference_of(supply, period, share * period, dry_out);
                    worst.first_run = std::max(worst.first_run, off.first_run);
                    worst.first_mean = std::max(worst.first_mean, off.first_mean);
                    worst.later = std::max(worst.later, off.later);
                    // What the advice asks for: enough water with a quarter more, a gap of half the dry-out.
                    if (share * period - 40.0 >= 1.25 * period / supply &&
                        period * (1.0 - share) + 40.0 <= 0.5 * dry_out) {
                        wet_cycles = std::max(wet_cycles, off.later);
                    }
                }
            }
        }
    }
    EXPECT_LT(worst.first_run, 0.70);
    EXPECT_LT(worst.first_mean, 0.50);
    EXPECT_LT(worst.later, 0.05);
    EXPECT_LT(wet_cycles, 1e-3);
}

}  // namespace
}  // namespace wetfront::test
