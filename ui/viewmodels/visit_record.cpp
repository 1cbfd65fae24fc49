// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/visit_record.h"

#include <algorithm>

#include "rules/rules.h"
#include "viewmodels/press_files.h"

namespace wetfront::ui {
namespace {

constexpr int first_retry_ms = 500;
constexpr int last_retry_ms = 30'000;

}  // namespace

VisitRecord::VisitRecord(const Context& context, VisitFile file, QObject* parent)
    : QObject{parent}, context_{context}, file_{std::move(file)} {
    retry_.setSingleShot(true);
    retry_.setInterval(first_retry_ms);
    connect(&retry_, &QTimer::timeout, this, [this] {
        retry_.setInterval(std::min(2 * retry_.interval(), last_retry_ms));
        store_waiting();
    });
    take_in_named_templates();
}

void VisitRecord::take_in_named_templates() {
    for (auto& timer : file_.house.timers) {
        if (timer.template_id.empty() || timer.controller) {
            continue;
        }
        // A record from before templates were taken into the house names one only.
        const auto named = context_.store.setting_template(timer.template_id);
        if (named && named.value().kind == timer.kind && check_template(named.value(), "")) {
            choose_controller(timer, named.value());
        }
    }
}

Result<void> VisitRecord::announce(Result<void> result) {
    if (result) {
        water_.reset();
        forget_derived();
        store_waiting();  // there is room again; if not for these, it goes on being said
        emit changed();
    } else if (result.error().kind == Error::Kind::storage) {
        set_storage_problem(QString::fromStdString(result.error().text()));
    }
    return result;
}

Result<void> VisitRecord::announce_entry(Result<void> result) {
    result = announce(std::move(result));
    if (result) {
        emit entries_changed();
    }
    return result;
}

Result<void> VisitRecord::save_farm() {
    return announce_entry(context_.store.save(file_.farm));
}
Result<void> VisitRecord::save_house() {
    return announce_entry(context_.store.save(file_.house));
}
Result<void> VisitRecord::save_visit() {
    return announce_entry(context_.store.save(file_.visit));
}
Result<void> VisitRecord::save_signed(std::string_view pdf) {
    return announce_entry(context_.store.keep_sheet(file_.visit, pdf));
}

Result<void> VisitRecord::save_with_photo(std::string_view jpeg) {
    return announce_entry(context_.store.keep_picture(file_.visit, jpeg));
}

Result<std::optional<UndoStep>> VisitRecord::undo() {
    return turn(&Store::undo);
}
Result<std::optional<UndoStep>> VisitRecord::redo() {
    return turn(&Store::redo);
}

Result<std::optional<UndoStep>> VisitRecord::turn(
    Result<std::optional<UndoStep>> (Store::*way)(const Id& visit)) {
    if (frozen()) {
        return bad_input("visit", "", "nothing of it can be changed");
    }
    if (!waiting_.empty()) {
        return bad_input("visit", "", "presses are not stored yet; they come first");
    }
    const auto again = [this, way]() -> Result<std::optional<UndoStep>> {
        WF_TRY(auto step, (context_.store.*way)(file_.visit.id));
        WF_TRY(file_, context_.store.visit_file(file_.visit.id));
        take_in_named_templates();
        return step;
    };
    auto step = again();
    WF_CHECK(announce_entry(step ? Result<void>{boost::outcome_v2::success()} : Result<void>{step.error()}));
    return step;
}

void VisitRecord::add_mark(Mark mark) {
    file_.visit.marks.push_back(mark);
    const Id id = mark.id;
    wait_with(std::move(mark), id, false);
}

void VisitRecord::set_undone(const Id& mark, bool undone) {
    const auto kept = std::ranges::find(file_.visit.marks, mark, &Mark::id);
    if (kept != file_.visit.marks.end()) {
        kept->undone = undone;
        wait_with(std::nullopt, mark, undone);
    }
}

void VisitRecord::wait_with(std::optional<Mark> mark, const Id& id, bool undone) {
    waiting_.push_back({std::move(mark), id, undone});
    store_waiting();
    forget_derived();
    emit changed();
}

Result<void> VisitRecord::store_one(const Waiting& waiting) {
    return waiting.mark ? context_.store.add_mark(file_.visit.id, *waiting.mark)
                        : context_.store.set_undone(waiting.id, waiting.undone);
}

void VisitRecord::store_waiting() {
    const bool was_shown = !storage_problem_.isEmpty();
    QString problem;
    for (auto next = waiting_.begin(); next != waiting_.end();) {
        const auto stored = store_one(*next);
        if (stored) {
            next = waiting_.erase(next);
            continue;
        }
        problem = QString::fromStdString(stored.error().text());
        if (stored.error().kind == Error::Kind::storage) {
            break;
        }
        ++next;  // that one is refused for what it is; it must not hold up those behind it
    }
    set_storage_problem(problem);
    if (waiting_.empty()) {
        retry_.stop();
        retry_.setInterval(first_retry_ms);
    } else {
        retry_.start();
    }
    if (was_shown && !storage_problem_.isEmpty()) {  // how many wait is shown too
        emit storage_problem_changed();
    }
}

void VisitRecord::close() {
    store_waiting();
    waiting_.clear();
    retry_.stop();
}

Result<QString> VisitRecord::write_presses(const QString& folder) const {
    return wetfront::ui::write_presses(file_.visit, folder);
}

void VisitRecord::set_storage_problem(const QString& problem) {
    if (problem != storage_problem_) {
        storage_problem_ = problem;
        emit storage_problem_changed();
    }
}

void VisitRecord::forget_derived() {
    timings_.reset();
    advice_.reset();
    proof_.reset();
    found_.reset();
    left_.reset();
}

const VisitTimings& VisitRecord::timings() {
    if (!timings_) {
        timings_ = timings_of(file_);
    }
    return *timings_;
}

const VisitWater& VisitRecord::water() {
    if (!water_) {
        water_ = water_of(file_);
    }
    return *water_;
}

const Advice& VisitRecord::advice() {
    if (!advice_) {
        advice_ = wetfront::advise(file_, water());
    }
    return *advice_;
}

const ProofRun& VisitRecord::proof() {
    if (!proof_) {
        proof_ = prove(file_, timings(), advice());
    }
    return *proof_;
}

const std::vector<Finding>& VisitRecord::found_findings() {
    if (!found_) {
        found_ = check(file_, timings(), advice(), WhichSettings::found);
    }
    return *found_;
}

const std::vector<Finding>& VisitRecord::left_findings() {
    if (!left_) {
        left_ = check(file_, timings(), advice(), WhichSettings::left);
    }
    return *left_;
}

}  // namespace wetfront::ui
