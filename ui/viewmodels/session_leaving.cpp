// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "viewmodels/session_view_model.h"

// What goes on while one is elsewhere: pumps that are off, a stopwatch that runs, and what is asked before
// leaving.
namespace wetfront::ui {
namespace {

constexpr std::int64_t urgent_ms = 120'000;

}  // namespace

bool SessionViewModel::asks_before_leaving(bool closing) {
    if (visit_ && visit_->waits_for_storage()) {
        emit leaveAsked(tr("Presses are not stored yet."),
                        tr("They are only on this screen and are lost if you leave now. Stay, make room, or "
                           "write them elsewhere first."),
                        closing);
        return true;
    }
    const bool timed_here = visit_ && !visit_->frozen() && visit_->stopwatch()->anything_timed() &&
                            pumps_off(visit_->file(), context_.clock).empty();
    if (timed_here || (closing && timed_elsewhere_)) {
        emit leaveAsked(tr("A pump is running on the stopwatch."),
                        tr("The time goes on and nothing is lost; Wetfront opens here again."), closing);
        return true;
    }
    if (visit_ && visit_->proof()->watching()) {
        emit leaveAsked(tr("A cycle is being watched for the proof."),
                        tr("What you see while you are away is not in it; the presses so far are kept."),
                        closing);
        return true;
    }
    const auto off = closing  ? all_pumps_off()
                     : visit_ ? pumps_off(visit_->file(), context_.clock)
                              : std::vector<PumpOff>{};
    if (!off.empty()) {
        emit leaveAsked(tr("A pump is off for a test: the birds are without cooling."),
                        closing ? tr("Nothing counts down once Wetfront is closed. Start the pump, or put it "
                                     "back on automatic, first.")
                                : tr("The countdown goes on, on every page. Start the pump, or put it back "
                                     "on automatic, before you go."),
                        closing);
        return true;
    }
    return false;
}

bool SessionViewModel::busy() const {
    return copies_->busy() || bundles_->busy() || sheets_->busy() || (visit_ && visit_->handout()->busy());
}

bool SessionViewModel::mayClose() {
    return !busy() && (closing_ || !asks_before_leaving(true));
}

std::vector<PumpOff> SessionViewModel::all_pumps_off() const {
    auto off = visit_ ? pumps_off(visit_->file(), context_.clock) : std::vector<PumpOff>{};
    off.insert(off.end(), off_elsewhere_.begin(), off_elsewhere_.end());
    return off;
}

std::optional<PumpOff> SessionViewModel::most_urgent_pump() const {
    const auto off = all_pumps_off();
    const auto least = std::min_element(off.begin(), off.end(), [this](const PumpOff& a, const PumpOff& b) {
        return ms_left(a, context_.clock) < ms_left(b, context_.clock);
    });
    return least == off.end() ? std::nullopt : std::optional{*least};
}

QString SessionViewModel::pumpOffText() const {
    const auto pump = most_urgent_pump();
    const bool here = pump && visit_ && visit_->file().visit.id == pump->visit;
    return pump ? words_of(*pump, context_.clock, context_.formatter, !here) : QString{};
}

bool SessionViewModel::pumpOffUrgent() const {
    const auto pump = most_urgent_pump();
    return pump && pump->agreed && ms_left(*pump, context_.clock) < urgent_ms;
}

void SessionViewModel::follow_pumps() {
    if (most_urgent_pump()) {
        second_.start();
    } else {
        second_.stop();
    }
    follow_timing();
    emit pumpOffChanged();
}

void SessionViewModel::look_for_timing_elsewhere() {
    const auto running = context_.store.visit_with_running_stopwatch(TimedIn::latest_marks);
    timed_elsewhere_ = running && running.value() && !(visit_ && visit_->file().visit.id == *running.value());
    if (timed_elsewhere_) {
        minute_.start();
    } else {
        minute_.stop();
    }
    follow_timing();
}

void SessionViewModel::follow_timing() {
    const bool here = visit_ && (visit_->stopwatch()->anything_timed() || visit_->proof()->watching());
    awake_.keep(here || timed_elsewhere_ || most_urgent_pump().has_value());
}

}  // namespace wetfront::ui
