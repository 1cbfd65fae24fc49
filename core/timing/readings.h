// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "timing/mark.h"
#include "timing/uncertainty.h"

namespace wetfront {

/// A time that is read off two marks.
enum class TimingKind {
    fill,         ///< pump start to water at the far end
    wet_through,  ///< pump start to even drip at the far end, from a dry pad
    run_off,      ///< pump stop to end of dripping
    dry_out,      ///< pump stop to the first dry patch, fans running
    wet_off,      ///< wet start: pump stop (far end dripping) to the next pump start
    wet_return,   ///< wet start: that pump start to the drip's return
};
[[nodiscard]] std::string_view name_of(TimingKind kind);

/// Why a reading is kept and shown but not part of a mean. Where several apply, the first of this list is
/// given.
enum class NotUsed {
    set_aside,      ///< a person said so, with a reason
    unverified,     ///< across a restart of the machine, or from a start or stop that nobody saw happen
    not_positive,   ///< the marks are in the wrong order: no time passed, or dripping was marked before water
    too_long,       ///< longer than 24 h: a mark is missing
    too_quick,      ///< a doubtful press: sooner than water can do it, or a second one within 0.3 s
    pressed_again,  ///< marked before in this run: the first press counts; undo that one to use this one
    upper_bound,    ///< "already there when I came"
    pads_not_dry,   ///< wet-through from a pad that was not dry: too short
    fans_off,       ///< dry-out without fans running
    fans_not_stated,  ///< dry-out where nobody said whether the fans ran
};
[[nodiscard]] std::string_view name_of(NotUsed why);

/// Names on the screen and in files.
// clang-format off
template <> struct EnumNames<TimingKind> { static constexpr std::array all{
    EnumName{TimingKind::fill, "fill"}, EnumName{TimingKind::wet_through, "wet-through"},
    EnumName{TimingKind::run_off, "run-off"}, EnumName{TimingKind::dry_out, "dry-out"},
    EnumName{TimingKind::wet_off, "wet start, off"}, EnumName{TimingKind::wet_return, "wet start, return"}}; };
template <> struct EnumNames<NotUsed> { static constexpr std::array all{
    EnumName{NotUsed::set_aside, "set aside"}, EnumName{NotUsed::unverified, "unverified"},
    EnumName{NotUsed::not_positive, "marks in the wrong order"}, EnumName{NotUsed::too_long, "longer than 24 h"},
    EnumName{NotUsed::too_quick, "too soon, or a second press"}, EnumName{NotUsed::pressed_again, "pressed again"},
    EnumName{NotUsed::upper_bound, "upper bound"}, EnumName{NotUsed::pads_not_dry, "pads not dry"},
    EnumName{NotUsed::fans_off, "fans off"}, EnumName{NotUsed::fans_not_stated, "fans not stated"}}; };
// clang-format on

/// One value off the stopwatch, from a start mark to an end mark.
struct Reading {
    TimingKind kind = TimingKind::fill;
    Id pump;
    Id bank;
    Id start_mark;
    Id end_mark;
    Duration value;
    std::optional<NotUsed> not_used;
    StartedBy started_by =
        StartedBy::me_here;            ///< who switched the pump; of two switchings, the less certain one
    std::optional<bool> fans_running;  ///< as stated at the start mark
    bool stands_out = false;  ///< Grubbs' test among the used readings of its bank and kind, and farther from
                              ///< their mean than hand and seeing explain (twice that part); still used
};

/// A reading that a person sets aside.
struct SetAside {
    Id end_mark;
    std::string reason;
    friend bool operator==(const SetAside&, const SetAside&) = default;
};

/// What the stopwatch says about one bank. Wetting time is wet-through minus fill.
struct BankTimings {
    Id bank;
    Id pump;
    std::optional<TimingResult> fill;
    std::optional<TimingResult> wetting;  ///< difference of the means, uncertainties combined; not positive
                                          ///< if the readings contradict each other
    std::optional<TimingResult> wet_through;
    std::optional<TimingResult> run_off;
    std::optional<TimingResult> dry_out;
    std::optional<TimingResult> wet_off;
    std::optional<TimingResult> wet_return;
    /// All wet-through readings used had the fans running, as stated. Otherwise, and where nobody said so,
    /// they count as off: that asks for more water, never for less.
    bool fans_ran_during_wet_through = false;
    bool fans_mixed = false;  ///< some of these readings with fans running, some not or not stated: a finding
};

struct VisitTimings {
    std::vector<Reading> readings;   ///< in the order of their end marks, used or not
    std::vector<BankTimings> banks;  ///< in the order given

    [[nodiscard]] const BankTimings* of(const Id& bank) const;
};

/// A bank and the pump that feeds it.
struct BankOfPump {
    Id bank;
    Id pump;
};

/// Marks (any order; undone ones are left out) to readings. What cannot be used is kept and carries why.
///
/// A pump start opens a run that lasts to the pump's next stop or start. In a run the first press for a bank
/// counts for fill and for the drip; after the stop, until the next start, for the end of the drip and for
/// the first dry patch. The drip is a wet-through, or in a run that began while the pads dripped a return,
/// with the time the pump was off before it; the two stand or fall together. A start or stop within 0.3 s of
/// another is not a second one. A mark that belongs to no run (a drip while the pump stands) makes no
/// reading. Times within one boot come from the boot clock; across a restart from wall time, unverified. A
/// bank's mark belongs to the pump that it names, or if it names none to the pump in `banks`. Marks of a
/// proof run make no reading, and its first start or stop ends whatever was being timed: the timer has the
/// pump again.
[[nodiscard]] std::vector<Reading> readings_of(std::span<const Mark> marks, std::span<const BankOfPump> banks,
                                               std::span<const SetAside> set_aside = {});

/// Readings to means with uncertainty, bank by bank. The systematic part of each is the hand's, with what
/// seeing the event adds (a drip or a dry patch) and with the signal's where a helper or the controller
/// switched the pump in any reading used. One reading of a bank takes its spread from the other banks'
/// readings of that kind if these repeat. `uncertainty`: each part finite and not negative, else there are no
/// results.
[[nodiscard]] VisitTimings timings_of(std::span<const Mark> marks, std::span<const BankOfPump> banks,
                                      std::span<const SetAside> set_aside = {},
                                      const EventUncertainty& uncertainty = {});

/// Which of a visit's marks: those that time the water, or those of the proof run (timing/proof_marks.h).
enum class MarksOf { timing, proof_run };

/// What a pump is doing as far as the marks tell: the running stopwatch is this and nothing else. Pumps in
/// the order given; bank marks are found by the pump that they name.
struct PumpState {
    Id pump;
    bool running = false;
    std::optional<Mark> since;  ///< the start or stop it has been in since; none if never marked, back on
                                ///< automatic, or switched by marks of the other sort since
    /// Bank marks after `since` in time order; neither undone nor doubtful.
    std::vector<Mark> marks_since;
};
[[nodiscard]] std::vector<PumpState> pump_states(std::span<const Mark> marks, std::span<const Id> pumps,
                                                 MarksOf of = MarksOf::timing);

}  // namespace wetfront
