// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "base/clock.h"
#include "base/enum_names.h"
#include "base/ids.h"

namespace wetfront {

/// What was seen or done. A pump event belongs to a pump, an arrival of water or of dryness to a bank.
enum class MarkKind {
    pump_start,
    water_at_far_end,  ///< end of the fill time
    far_end_drips,  ///< even drip under the pad farthest from the pump: end of the wet-through time, or its
                    ///< return
    pump_stop,
    drip_ends,          ///< end of the run-off time
    first_dry_patch,    ///< end of the dry-out time
    back_on_automatic,  ///< the controller has the pump again: a pump event that ends the test
};

/// How the moment of a mark was obtained.
enum class TimedBy {
    event_stamp,    ///< the input event's own time stamp, mapped to the boot clock
    handler,        ///< the time at which the program got round to it: the stamp could not be trusted
    after_restart,  ///< from wall time across a restart of the machine: unverified, never used in a mean
};

/// What the person saw at that moment.
enum class Seen {
    as_it_happened,
    already_there,  ///< "it was already there when I came": an upper bound, never part of a mean
};

/// Who switches the pump, seen from where the event is watched.
enum class StartedBy {
    me_here,        ///< I switch it and see the far end from here
    me_then_walk,   ///< I switch it and walk to the far end
    helper_signal,  ///< a helper on my signal
    controller,     ///< the controller at a set minute (countdown)
};

/// State of the pads of a pump when it starts.
enum class PadsAtStart {
    dry,       ///< bone dry: a wet-through reading can be used
    dripping,  ///< the pump was stopped while the far end dripped: a wet start
    not_dry,   ///< something between: kept, shown, not used
};

/// One press. Written once; undoing or redoing it is a record of its own and only sets `undone` here.
struct Mark {
    Id id;
    MarkKind kind = MarkKind::pump_start;
    Id pump;
    Id bank;  ///< empty for pump events
    BootTime at;
    WallTime wall;
    TimedBy timed_by = TimedBy::handler;
    std::optional<std::int64_t>
        stamp_error_ns;  ///< estimated error of the mapping from event stamp to boot clock
    Seen seen = Seen::as_it_happened;
    bool undone = false;
    // For pump_start only; for pump_stop `started_by` says who stopped it.
    StartedBy started_by = StartedBy::me_here;
    PadsAtStart pads = PadsAtStart::not_dry;
    std::optional<bool> fans_running;  ///< pump_start: during this run; pump_stop: while the pads dry
    /// Of a proof run: a cycle that the timer makes by itself and somebody watches. Never part of a reading.
    bool proof = false;

    friend bool operator==(const Mark&, const Mark&) = default;
};

/// Names in files and in the journal; read them with enum_name() and enum_value().
// clang-format off
template <> struct EnumNames<MarkKind> { static constexpr std::array all{
    EnumName{MarkKind::pump_start, "pump start"}, EnumName{MarkKind::water_at_far_end, "water at far end"},
    EnumName{MarkKind::far_end_drips, "far end drips"}, EnumName{MarkKind::pump_stop, "pump stop"},
    EnumName{MarkKind::drip_ends, "drip ends"}, EnumName{MarkKind::first_dry_patch, "first dry patch"},
    EnumName{MarkKind::back_on_automatic, "back on automatic"}}; };
template <> struct EnumNames<TimedBy> { static constexpr std::array all{
    EnumName{TimedBy::event_stamp, "event stamp"}, EnumName{TimedBy::handler, "handler"},
    EnumName{TimedBy::after_restart, "after restart"}}; };
template <> struct EnumNames<Seen> { static constexpr std::array all{
    EnumName{Seen::as_it_happened, "as it happened"}, EnumName{Seen::already_there, "already there"}}; };
template <> struct EnumNames<StartedBy> { static constexpr std::array all{
    EnumName{StartedBy::me_here, "me here"}, EnumName{StartedBy::me_then_walk, "me then walk"},
    EnumName{StartedBy::helper_signal, "helper on signal"}, EnumName{StartedBy::controller, "controller"}}; };
template <> struct EnumNames<PadsAtStart> { static constexpr std::array all{
    EnumName{PadsAtStart::dry, "dry"}, EnumName{PadsAtStart::dripping, "dripping"},
    EnumName{PadsAtStart::not_dry, "not dry"}}; };
// clang-format on

}  // namespace wetfront
