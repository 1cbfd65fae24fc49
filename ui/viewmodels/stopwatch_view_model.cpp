// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/stopwatch_view_model.h"

#include <algorithm>
#include <functional>

#include "cycle/visit_water.h"
#include "rules/checklists.h"
#include "sheet/words.h"
#include "viewmodels/elapsed.h"
#include "viewmodels/houses_model.h"
#include "viewmodels/marks_at_hand.h"
#include "viewmodels/timing_words.h"

namespace wetfront::ui {
namespace {

constexpr int tick_ms = 100;
constexpr std::int64_t minute_ms = 60'000;
constexpr int columns = 20;  // of the picture, as the wetting model counts them

QString qstring(const Id& id) {
    return QString::fromStdString(id.text);
}

QString enum_qstring(std::string_view name) {
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

// What is timed across a restart of the machine is never used: starting again comes first, going on stays
// possible.
StopwatchGuide repeated(StopwatchGuide guide) {
    const PossibleMark start{MarkKind::pump_start, {}};
    if (guide.next != start) {
        std::erase(guide.others, start);
        guide.others.insert(guide.others.begin(), guide.next);
        guide.next = start;
    }
    return guide;
}

}  // namespace

StopwatchViewModel::StopwatchViewModel(VisitRecord& record, const PressClock& presses, VisitTimings earlier,
                                       QObject* parent)
    : QObject{parent}, record_{record}, presses_{presses}, earlier_{std::move(earlier)} {
    tick_.setInterval(tick_ms);
    connect(&tick_, &QTimer::timeout, this, &StopwatchViewModel::ticked);
    connect(&record_, &VisitRecord::changed, this, &StopwatchViewModel::follow_marks);
    follow_marks();
}

void StopwatchViewModel::follow_marks() {
    const auto& house = record_.file().house;
    if (house.pump(pump_) == nullptr) {
        // After a restart the page opens where something runs.
        pump_ = house.pumps.empty() ? Id{} : house.pumps.front().id;
        const auto& marks = record_.file().visit.marks;
        const auto newest = std::max_element(marks.begin(), marks.end(), earlier_in_time);
        if (newest != marks.end() && house.pump(newest->pump) != nullptr) {
            pump_ = newest->pump;
        }
    }
    const auto ids = bank_ids();
    if (std::find(ids.begin(), ids.end(), bank_) == ids.end()) {
        bank_ = ids.empty() ? Id{} : ids.front();
    }
    state_ = state_of(pump_);
    guide_ = stopwatch_guide(state_, ids, bank_, pads_);
    if (unverified()) {
        guide_ = repeated(std::move(guide_));
    }
    put_chosen_first();
    already_there_ = already_there_ && canBeAlreadyThere();
    if (!guide_.next.bank.empty()) {
        bank_ = guide_.next.bank;  // the next thing to see is there
    }
    if (is_timing() || (asksStart() && started_by_ == StartedBy::controller)) {
        tick_.start();
    } else {
        tick_.stop();
    }
    emit changed();
    emit ticked();
}

// In the place of the one chosen, so that no button moves under a finger.
void StopwatchViewModel::put_chosen_first() {
    const auto other = chosen_ ? std::ranges::find(guide_.others, *chosen_) : guide_.others.end();
    if (other == guide_.others.end()) {
        chosen_.reset();
    } else {
        std::swap(*other, guide_.next);
    }
}

void StopwatchViewModel::offer_what_is_usual() {
    chosen_.reset();
    already_there_ = false;
}

PumpState StopwatchViewModel::state_of(const Id& pump) const {
    const std::vector<Id> one{pump};
    const PumpState nothing{pump, false, std::nullopt, {}};
    const auto states = pump_states(record_.file().visit.marks, one);
    if (states.empty() || !states.front().since) {
        return nothing;
    }
    return ms_since(*states.front().since, record_.context().clock) < longest_test_ms ? states.front()
                                                                                      : nothing;
}

// From a pump's start or stop until its banks are dry again.
bool StopwatchViewModel::is_timing() const {
    const auto ids = bank_ids();
    return is_being_timed(state_, ids);
}

bool StopwatchViewModel::anything_timed() const {
    return std::ranges::any_of(record_.file().house.pumps, [this](const Pump& pump) {
        return is_being_timed(state_of(pump.id), banks_of(pump.id));
    });
}

std::vector<Id> StopwatchViewModel::bank_ids() const {
    return banks_of(pump_);
}

std::vector<Id> StopwatchViewModel::banks_of(const Id& pump) const {
    std::vector<Id> ids;
    for (const auto& bank : record_.file().house.banks) {
        if (bank.pump == pump) {
            ids.push_back(bank.id);
        }
    }
    return ids;
}

QString StopwatchViewModel::name_of_bank(const Id& bank) const {
    const auto* found = record_.file().house.bank(bank);
    return found == nullptr ? tr("this bank") : QString::fromStdString(found->name);
}

QVariantList StopwatchViewModel::pumps() const {
    QVariantList list;
    for (const auto& pump : record_.file().house.pumps) {
        const auto state = state_of(pump.id);
        const QString name = QString::fromStdString(pump.name);
        list.append(QVariantMap{{"value", qstring(pump.id)},
                                {"text", state.running ? tr("%1: running").arg(name)
                                         : state.since ? tr("%1: stopped").arg(name)
                                                       : name},
                                {"running", state.running}});
    }
    return list;
}

QVariantList StopwatchViewModel::banks() const {
    QVariantList list;
    for (const auto& bank : bank_ids()) {
        const auto has = [&](MarkKind kind) {
            return std::any_of(state_.marks_since.begin(), state_.marks_since.end(),
                               [&](const Mark& mark) { return mark.kind == kind && mark.bank == bank; });
        };
        QString doing;
        if (state_.running) {
            doing = has(MarkKind::far_end_drips)      ? tr("drips")
                    : has(MarkKind::water_at_far_end) ? tr("wetting")
                                                      : tr("filling");
        } else if (state_.since) {
            doing = has(MarkKind::first_dry_patch) ? tr("dry patch seen")
                    : has(MarkKind::drip_ends)     ? tr("drying")
                                                   : tr("running off");
        }
        const QString name = name_of_bank(bank);
        list.append(QVariantMap{{"value", qstring(bank)},
                                {"text", doing.isEmpty() ? name : tr("%1: %2").arg(name, doing)}});
    }
    return list;
}

QString StopwatchViewModel::pump() const {
    return qstring(pump_);
}
QString StopwatchViewModel::bank() const {
    return qstring(bank_);
}

void StopwatchViewModel::choosePump(const QString& id) {
    pump_ = Id{id.toStdString()};
    offer_what_is_usual();
    follow_marks();
}

void StopwatchViewModel::chooseBank(const QString& id) {
    bank_ = Id{id.toStdString()};
    offer_what_is_usual();
    follow_marks();
}

QString StopwatchViewModel::words_of(const PossibleMark& what) const {
    return mark_words(what.kind, name_of_bank(what.bank));
}

QString StopwatchViewModel::markText() const {
    return words_of(guide_.next);
}

QVariantList StopwatchViewModel::otherMarks() const {
    QVariantList list;
    for (std::size_t i = 0; i < guide_.others.size(); ++i) {
        list.append(QVariantMap{{"text", words_of(guide_.others[i])}, {"index", static_cast<int>(i)}});
    }
    return list;
}

// A reading under way is never blocked.
bool StopwatchViewModel::needs_agreement() const {
    const auto& visit = record_.file().visit;
    return !std::ranges::any_of(visit.marks, std::not_fn(&Mark::proof)) &&
           (!visit.agreement.longest_pump_off || !visit.agreement.stop_temperature);
}

QString StopwatchViewModel::blockedWhy() const {
    if (record_.read_only()) {
        return tr("The records are only looked at: nothing can be timed.");
    }
    if (record_.frozen()) {
        return tr("This visit is signed. Start a new visit to time again.");
    }
    if (bank_ids().empty()) {
        return tr("Describe a pump and its banks first.");
    }
    return needs_agreement() ? tr("First agree with the grower how long the pads may be off, and at which "
                                  "temperature you stop.")
                             : QString{};
}

int StopwatchViewModel::blockedStep() const {
    if (record_.frozen()) {
        return -1;
    }
    return bank_ids().empty()  ? static_cast<int>(Step::house_and_banks)
           : needs_agreement() ? static_cast<int>(Step::safety)
                               : -1;
}

QString StopwatchViewModel::instruction() const {
    if (const QString why = blockedWhy(); !why.isEmpty()) {
        return why;
    }
    if (unverified()) {
        return tr(
            "The tablet restarted: this time is not verified and not used. Let the pads dry, then start "
            "again.");
    }
    if (already_there_) {
        return tr("Press now: it was already there when you came, so it counts as an upper bound only.");
    }
    const QString bank = name_of_bank(guide_.next.bank);
    switch (guide_.next.kind) {
        case MarkKind::pump_start:
            if (pads_ == PadsAtStart::dripping && state_.since) {
                return tr("Start the pump again before the pad dries, then go to the far end.");
            }
            return state_.since ? tr("Pads dry? Say who starts the pump, then press as it starts.")
                                : tr("Pads dry already? Press as the pump starts. Still wet? Choose Pump "
                                     "stops, then press as you stop it.");
        case MarkKind::pump_stop:
            if (chosen_) {
                return state_.running ? tr("Press as the pump stops. What a bank has not shown by then is "
                                           "not timed in this run.")
                                      : tr("Press as the pump stops.");
            }
            return pads_ == PadsAtStart::dripping && !state_.since
                       ? tr("See the far end drip, then press as the pump stops.")
                       : tr("Every bank drips: press as the pump stops.");
        case MarkKind::water_at_far_end:
            return tr("Stand at the far end of %1: press when water comes out there.").arg(bank);
        case MarkKind::far_end_drips:
            return tr("Watch under %1: press when it drips evenly and no dry streak is left.").arg(bank);
        case MarkKind::drip_ends:
            return tr("Watch under %1: press when it stops dripping.").arg(bank);
        case MarkKind::first_dry_patch:
            return tr("%1 dries: press at the first dry patch. Time another pump or enter settings "
                      "meanwhile.")
                .arg(bank);
        case MarkKind::back_on_automatic:
            break;
    }
    return {};
}

QString StopwatchViewModel::startedBy() const {
    return enum_qstring(enum_name(started_by_));
}
QString StopwatchViewModel::pads() const {
    return enum_qstring(enum_name(pads_));
}
QString StopwatchViewModel::fans() const {
    return fans_ ? (*fans_ ? QStringLiteral("yes") : QStringLiteral("no")) : QString{};
}

void StopwatchViewModel::setStartedBy(const QString& name) {
    if (const auto value = enum_value<StartedBy>(name.toStdString())) {
        started_by_ = *value;
        follow_marks();
    }
}

void StopwatchViewModel::setPads(const QString& name) {
    if (const auto value = enum_value<PadsAtStart>(name.toStdString())) {
        pads_ = *value;
        follow_marks();
    }
}

void StopwatchViewModel::setFans(const QString& answer) {
    fans_ = answer.isEmpty() ? std::nullopt : std::optional<bool>{answer == QStringLiteral("yes")};
    emit changed();
}

std::optional<std::int64_t> StopwatchViewModel::elapsed_ms() const {
    return is_timing() ? std::optional{ms_since(*state_.since, record_.context().clock)} : std::nullopt;
}

bool StopwatchViewModel::unverified() const {
    return is_timing() && state_.since->at.boot_id != record_.context().clock.boot_now().boot_id;
}

QString StopwatchViewModel::elapsedText() const {
    const auto& formatter = record_.context().formatter;
    if (asksStart() && started_by_ == StartedBy::controller) {
        return formatter.clock(minute_ms - record_.context().clock.wall_now().unix_ms % minute_ms, false);
    }
    const auto ms = elapsed_ms();
    return ms ? formatter.clock(*ms, true) : QString{};
}

QString StopwatchViewModel::elapsedLabel() const {
    if (asksStart() && started_by_ == StartedBy::controller) {
        return tr("to the next full minute on this tablet's clock");
    }
    if (!is_timing()) {
        return {};
    }
    return state_.running ? tr("since the pump started") : tr("since the pump stopped");
}

void StopwatchViewModel::mark() {
    if (canMark()) {
        make(PossibleMark{guide_.next}, already_there_ ? Seen::already_there : Seen::as_it_happened);
    }
}

void StopwatchViewModel::chooseOther(int index) {
    if (canMark() && index >= 0 && index < static_cast<int>(guide_.others.size())) {
        chosen_ = guide_.others[static_cast<std::size_t>(index)];
        already_there_ = false;
        follow_marks();
    }
}

void StopwatchViewModel::setAlreadyThere(bool there) {
    if (there != already_there_ && (!there || (canMark() && canBeAlreadyThere()))) {
        already_there_ = there;
        emit changed();
    }
}

void StopwatchViewModel::make(const PossibleMark& what, Seen seen) {
    Mark mark = mark_of(presses_.press(), record_.context().store.new_id(), what, pump_);
    mark.seen = seen;
    if (what.kind == MarkKind::pump_start || what.kind == MarkKind::pump_stop) {
        mark.started_by = started_by_;
        mark.fans_running = fans_;
    }
    if (what.kind == MarkKind::pump_start) {
        mark.pads = pads_;
    }
    if (!what.bank.empty()) {
        bank_ = what.bank;
    }
    const QString words = words_of(what);
    offer_what_is_usual();
    record_.add_mark(std::move(mark));
    emit marked(words);
}

bool StopwatchViewModel::canHandBack() const {
    return state_.since && !record_.frozen();
}

void StopwatchViewModel::handBack() {
    if (canHandBack()) {
        make({MarkKind::back_on_automatic, {}}, Seen::as_it_happened);
    }
}

const Mark* StopwatchViewModel::to_undo() const {
    return record_.frozen() ? nullptr : last_standing(record_.file().visit.marks, pump_, MarksOf::timing);
}

const Mark* StopwatchViewModel::to_redo() const {
    return record_.frozen() ? nullptr : next_undone(record_.file().visit.marks, pump_, MarksOf::timing);
}

QString StopwatchViewModel::undoText() const {
    const auto* mark = to_undo();
    return mark == nullptr ? QString{} : tr("Undo: %1").arg(words_of({mark->kind, mark->bank}));
}

QString StopwatchViewModel::redoText() const {
    const auto* mark = to_redo();
    return mark == nullptr ? QString{} : tr("Redo: %1").arg(words_of({mark->kind, mark->bank}));
}

void StopwatchViewModel::undo() {
    if (const auto* mark = to_undo()) {
        const Id id = mark->id;
        offer_what_is_usual();
        record_.set_undone(id, true);
    }
}

void StopwatchViewModel::redo() {
    if (const auto* mark = to_redo()) {
        const Id id = mark->id;
        offer_what_is_usual();
        record_.set_undone(id, false);
    }
}

QVariantList StopwatchViewModel::lastMarks() const {
    auto marks = record_.file().visit.marks;
    std::erase_if(marks, [](const Mark& mark) { return mark.proof; });
    std::stable_sort(marks.begin(), marks.end(),
                     [](const Mark& a, const Mark& b) { return earlier_in_time(b, a); });
    const auto doubts = doubts_of(record_.file());
    QVariantList list;
    for (const auto& mark : marks) {
        const auto* pump = record_.file().house.pump(mark.pump);
        QString text = words_of({mark.kind, mark.bank});
        if (mark.bank.empty() && pump != nullptr && record_.file().house.pumps.size() > 1) {
            text = tr("%1: %2").arg(QString::fromStdString(pump->name), text);
        }
        if (mark.seen == Seen::already_there) {
            text = tr("%1 (already there)").arg(text);
        }
        list.append(QVariantMap{{"text", text},
                                {"time", QString::fromStdString(local_clock(mark.wall))},
                                {"undone", mark.undone},
                                {"doubt", doubt_words(doubts, mark.id)}});
    }
    return list;
}

QVariantList StopwatchViewModel::results() const {
    QVariantList list;
    const auto& formatter = record_.context().formatter;
    for (const auto& bank : record_.timings().banks) {
        for (const auto& [kind, result] : results_of(bank)) {
            // Two figures of an uncertainty are enough (GUM 7.2.6), and more would be read as knowledge.
            const double step = in_seconds(result->expanded) >= 10.0 ? 1.0 : 0.1;
            list.append(QVariantMap{
                {"bank", name_of_bank(bank.bank)},
                {"what", formatter.text(label_of(kind))},
                {"mean", formatter.text(rounded_to(result->mean, step))},
                {"uncertainty", tr("± %1").arg(formatter.text(rounded_to(result->expanded, step)))},
                {"count", result->count},
                {"spread", spread_words(*result, formatter)},
            });
        }
    }
    return list;
}

QVariantList StopwatchViewModel::readings() const {
    QVariantList list;
    const auto& formatter = record_.context().formatter;
    for (const auto& reading : record_.timings().readings) {
        list.append(QVariantMap{
            {"bank", name_of_bank(reading.bank)},
            {"what", formatter.text(label_of(reading.kind))},
            {"value", formatter.text(rounded_to(reading.value, 0.1))},
            {"used", !reading.not_used.has_value()},
            {"why", reading.not_used
                        ? formatter.text(label_of(*reading.not_used))
                        : (reading.stands_out ? tr("stands out from the others; still used") : QString{})},
            {"setAside", reading.not_used == NotUsed::set_aside},
            {"endMark", qstring(reading.end_mark)},
        });
    }
    return list;
}

void StopwatchViewModel::setAside(const QString& endMark, const QString& reason) {
    record_.visit().set_aside.push_back({Id{endMark.toStdString()}, reason.toStdString()});
    if (!record_.save_visit()) {
        record_.visit().set_aside.pop_back();
    }
}

void StopwatchViewModel::useAgain(const QString& endMark) {
    auto& list = record_.visit().set_aside;
    const auto before = list;
    std::erase_if(list, [&](const SetAside& entry) { return entry.end_mark.text == endMark.toStdString(); });
    if (!record_.save_visit()) {
        list = before;
    }
}

bool StopwatchViewModel::pumpOnLeft() const {
    const auto* bank = record_.file().house.bank(bank_);
    return bank == nullptr || bank->pump_end == PumpEnd::left;
}

double StopwatchViewModel::aspect() const {
    const auto* bank = record_.file().house.bank(bank_);
    return bank == nullptr ? 0.0 : aspect_of(*bank);
}

std::optional<Duration> StopwatchViewModel::fill_to_expect() const {
    for (const auto* timings : {record_.timings().of(bank_), earlier_.of(bank_)}) {
        if (timings != nullptr && timings->fill) {
            return timings->fill->mean;
        }
    }
    const auto* bank = record_.file().house.bank(bank_);
    const auto expected = bank != nullptr ? expected_fill(record_.water(), *bank) : std::nullopt;
    return expected ? std::optional{expected->usual} : std::nullopt;
}

std::optional<Duration> StopwatchViewModel::wetting_to_expect() const {
    for (const auto* timings : {record_.timings().of(bank_), earlier_.of(bank_)}) {
        if (timings != nullptr && timings->wetting) {
            return timings->wetting->mean;
        }
    }
    return std::nullopt;
}

double StopwatchViewModel::headerFront() const {
    const auto fill = fill_to_expect();
    const auto elapsed = elapsed_ms();
    if (!state_.running || !fill || !elapsed) {
        return state_.running ? -1.0 : 0.0;
    }
    return std::min(1.0, static_cast<double>(*elapsed) / 1000.0 / in_seconds(*fill));
}

QList<double> StopwatchViewModel::wetFront() const {
    QList<double> fronts;
    if (!state_.running) {
        // A pad that was wet stays so until somebody sees it dry.
        const bool dry =
            !is_timing() ||
            std::any_of(state_.marks_since.begin(), state_.marks_since.end(), [this](const Mark& mark) {
                return mark.kind == MarkKind::first_dry_patch && mark.bank == bank_;
            });
        return dry ? fronts : QList<double>(columns, 1.0);
    }
    const auto fill = fill_to_expect();
    const auto wetting = wetting_to_expect();
    const auto elapsed = elapsed_ms();
    if (!state_.running || !fill || !wetting || !elapsed) {
        return fronts;
    }
    for (int i = 0; i < columns; ++i) {
        const double arrival = in_seconds(*fill) * (i + 0.5) / columns;
        const double wet = (static_cast<double>(*elapsed) / 1000.0 - arrival) / in_seconds(*wetting);
        fronts.append(std::max(0.0, std::min(1.0, wet)));
    }
    return fronts;
}

}  // namespace wetfront::ui
