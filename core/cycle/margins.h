// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <initializer_list>
#include <string>
#include <vector>

#include "cycle/reason.h"
#include "records/house.h"

namespace wetfront {

/// The margins and limits of the advice: all of them, here and nowhere else, with the program's own values. A
/// farm may have others (margins_of()). limit_text() says each with its source; what is assumed or changed is
/// shown as such and listed on the sheet.
struct CycleMargins {
    // How long, and how it adapts (model rules 1 to 6)
    double water_margin = 1.25;           ///< m; at least 1
    Duration least_rest = seconds(60.0);  ///< shortest time that a pump stays off
    double drying_share = 0.5;            ///< share of the dry-out time that a gap may take, (0, 1]
    double constant_share = 0.7;          ///< c of the wetting column, (0, 1)
    std::vector<Duration> periods{seconds(300.0), seconds(600.0)};  ///< tried in this order
    Duration house_lag = seconds(600.0);  ///< until the house answers a change of on-time
    TemperatureDifference dead_band = from_si<TemperatureDifference>(0.5);  ///< no trim within it

    // When pads may run (model rules 7 to 9)
    Temperature coolest_start = celsius(27.0);  ///< band of start temperatures with older birds
    Temperature warmest_start = celsius(30.0);
    Temperature start_temperature =
        from_si<Temperature>((83.0 + 459.67) * 5.0 / 9.0);  ///< advised; within the band
    double older_birds_days = 28.0;                         ///< from that age on the band holds
    Velocity least_air_speed = from_si<Velocity>(2.54);     ///< down the house, before pads are used
    TemperatureDifference least_cooling =
        from_si<TemperatureDifference>(2.0);            ///< below it pads are not worth their damp
    Temperature hot_outside = celsius(35.0);            ///< from there on no humidity stops pads
    Fraction humidity_step = from_si<Fraction>(0.01);   ///< of a cut-off
    Duration night = seconds(22.0 * 3600.0);            ///< time of day by which pads are dry
    double dry_face = 0.05;                             ///< wet share of the face of a dry pad, (0, 1)
    Duration longest_dry_down = seconds(4.0 * 3600.0);  ///< a pad not dry by then stays wet till dawn
    Duration clock_ahead_of_sun = seconds(3600.0);      ///< 0 to 3 h; summer time and longitude
    Duration clock_step = seconds(900.0);               ///< of a time of day
};

/// Each of them by name.
enum class Limit {
    water_margin,
    least_rest,
    drying_share,
    constant_share,
    periods,
    house_lag,
    dead_band,
    start_band,
    start_temperature,
    older_birds,
    air_speed,
    least_cooling,
    hot_outside,
    humidity_step,
    night,
    dry_face,
    longest_dry_down,
    clock_ahead_of_sun,
    clock_step,
};
inline constexpr std::array all_limits{
    Limit::water_margin,      Limit::least_rest,         Limit::drying_share, Limit::constant_share,
    Limit::periods,           Limit::house_lag,          Limit::dead_band,    Limit::start_band,
    Limit::start_temperature, Limit::older_birds,        Limit::air_speed,    Limit::least_cooling,
    Limit::hot_outside,       Limit::humidity_step,      Limit::night,        Limit::dry_face,
    Limit::longest_dry_down,  Limit::clock_ahead_of_sun, Limit::clock_step};

/// "shortest rest 60 s", whether that is assumed, published or, where it differs from the program's own,
/// entered, and by whom.
struct LimitText {
    Message text;
    Origin origin = Origin::assumed;
    std::string source;  ///< publication, or "common practice, no source"; empty where it is plainly assumed
};
[[nodiscard]] LimitText limit_text(const CycleMargins& margins, Limit limit);

/// The value alone: "60 s", "27 °C to 30 °C".
[[nodiscard]] Message limit_value(const CycleMargins& margins, Limit limit);

/// True where it is not the program's own value.
[[nodiscard]] bool is_changed(const CycleMargins& margins, Limit limit);

/// A limit as input of a reason; `value` is the one of its numbers that the reason uses.
[[nodiscard]] ReasonInput limit_input(const CycleMargins& margins, Limit limit, Message name,
                                      std::string symbol, AnyQuantity value);

/// `own`, the source of what rests on the program's own values of these limits; it says so where one of them
/// was changed.
[[nodiscard]] std::string limit_source(const CycleMargins& margins, std::initializer_list<Limit> limits,
                                       std::string own);

/// The limits on how long pumps run, as far as they are numbers that can be worked with: an error names the
/// first that is not.
[[nodiscard]] Result<void> check_cycle_limits(const CycleMargins& margins);

/// The program's own values with what was changed for the farm. An error names the first limit that cannot be
/// worked with beside the others.
[[nodiscard]] Result<CycleMargins> margins_of(const Farm& farm);

/// The margins that the farm's advice is made with: those of margins_of(), and where these cannot be used the
/// program's own, all of them, as nobody chose a mixture. Whoever makes advice says which.
[[nodiscard]] CycleMargins usable_margins(const Farm& farm);

/// The program's own values as the record of a farm would hold them, every one set.
[[nodiscard]] Limits every_limit();

}  // namespace wetfront
