// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>

#include "pad/wetting_column.h"

// The judge of settings: a pad as it truly is, walked through its cycles by the wetting column.
namespace wetfront::test {

inline constexpr double constant_share = 0.7;
inline constexpr int columns = 20;
inline constexpr double an_hour = 3600.0;

/// A pad as it is: seconds until water is at the far end, to wet it there from dry, and to dry.
struct TruePad {
    double fill;
    double wetting;
    double dry_out;
};

struct Judgement {
    bool dry = false;          ///< some column is not wholly wet at some time of a steady cycle
    bool wet_in_time = false;  ///< the far end dripped within an hour of a dry start
};

class Column {
public:
    Column(ColumnRates rates, double arrival) : rates_{rates}, arrival_{arrival} {}

    /// One pump run of that length and what follows until `period` is over; the largest deficit on the way.
    double cycle(double on, double period) {
        const double supplied = std::max(0.0, on - arrival_);
        const double before = supplied > 0.0 ? arrival_ : 0.0;
        deficit_ = deficit_after_drying(rates_, deficit_, seconds(before));
        double largest = deficit_;
        deficit_ = deficit_after_supply(rates_, deficit_, seconds(supplied));
        dripped_ = dripped_ || deficit_ <= 0.0;
        deficit_ = deficit_after_drying(rates_, deficit_, seconds(std::max(0.0, period - before - supplied)));
        return std::max(largest, deficit_);
    }
    void never_stops(double time) {
        deficit_ = deficit_after_supply(rates_, deficit_, seconds(time));
        dripped_ = dripped_ || deficit_ <= 0.0;
    }
    [[nodiscard]] double deficit() const { return deficit_; }
    [[nodiscard]] bool dripped() const { return dripped_; }

private:
    ColumnRates rates_;
    double arrival_;
    double deficit_ = 1.0;
    bool dripped_ = false;
};

inline Judgement judged(const TruePad& pad, double evaporation_ratio, double period, double run,
                        double rinse) {
    const ColumnRates rates{from_si<Rate>(1.0 / pad.wetting),
                            from_si<Rate>(constant_share / pad.dry_out * evaporation_ratio), constant_share};
    constexpr double dry_above = constant_share + 1e-6;
    Judgement judgement;
    for (int i = 1; i <= columns + 1; ++i) {
        const double share = i <= columns ? (i - 0.5) / columns : 1.0;
        Column column{rates, pad.fill * share};
        if (rinse > 0.0) {
            column.cycle(rinse, rinse);
        }
        if (run >= period) {
            column.never_stops(an_hour - rinse);
            judgement.wet_in_time = column.dripped();
            column.never_stops(24.0 * an_hour);
            judgement.dry = judgement.dry || column.deficit() > dry_above;
            continue;
        }
        double time = rinse;
        judgement.wet_in_time = column.dripped();
        for (int steady = 0, cycles = 0; steady < 3 && cycles < 5000; ++cycles) {
            const double at_start = column.deficit();
            const double largest = column.cycle(run, period);
            time += period;
            judgement.wet_in_time = judgement.wet_in_time || (column.dripped() && time - period <= an_hour);
            const bool moves = std::abs(column.deficit() - at_start) > 1e-9;
            steady = moves ? 0 : steady + 1;
            judgement.dry = judgement.dry || (!moves && largest > dry_above);
        }
    }
    return judgement;
}

}  // namespace wetfront::test
