// SPDX-License-Identifier: Apache-2.0
#include "act.h"

#include <algorithm>
#include <utility>

#include "core/store/samples.h"

namespace wetfront::test {
namespace {

Visit with_points(const std::string& visit, std::vector<std::string> points) {
    auto changed = sample_visit(visit);
    changed.open_points = std::move(points);
    return changed;
}

Visit signed_off(Visit visit) {
    visit.signatures = {sample_signature()};
    return visit;
}

Visit correction() {
    auto visit = sample_visit("visit-2");
    visit.started.unix_ms += 3'600'000;
    visit.replaces = Id{"visit-1"};
    return visit;
}

SettingTemplate sample_template() {
    SettingTemplate described;
    described.id = Id{"template-1"};
    described.name = "Two minutes in ten";
    return described;
}

VisitFile from_elsewhere() {
    VisitFile file;
    file.farm = sample_farm();
    file.farm.id = Id{"farm-9"};
    file.house = sample_house();
    file.house.id = Id{"house-9"};
    file.house.farm = file.farm.id;
    file.visit = sample_visit("visit-9");
    file.visit.house = file.house.id;
    file.visit.marks = {sample_mark("far-1", MarkKind::pump_start, 1),
                        sample_mark("far-2", MarkKind::pump_stop, 9)};
    file.visit.marks[1].undone = true;
    return file;
}

Act import_act() {
    return {"add a file from elsewhere", [](Store& store) { return store.add(from_elsewhere()); },
            [](Book& book) {
                const auto file = from_elsewhere();
                book.put(file.farm);
                book.put(file.house);
                book.put(file.visit);
                for (const auto& mark : file.visit.marks) {
                    book.add_mark(file.visit.id, mark);
                }
            }};
}

/// The store's errors go to the outcome; a refusal of what rests on an act that failed is expected.
bool note(Outcome& outcome, const Act& act, const Error& error) {
    if (error.kind == Error::Kind::bad_input) {
        if (outcome.errors.empty()) {
            outcome.wrong = act.name + " refused: " + error.text();
        }
        return false;
    }
    outcome.errors.push_back(error);
    return true;
}

void open(Outcome& outcome, const Act& act, const std::filesystem::path& file, const FakeClock& clock) {
    outcome.store.reset();
    for (int attempt = 0; attempt < 2 && !outcome.store; ++attempt) {
        auto opened = Store::open(file, clock);
        if (opened) {
            outcome.store.emplace(std::move(opened).value());
        } else {
            note(outcome, act, opened.error());
        }
    }
}

/// Two attempts to read all of it.
void view(Outcome& outcome, const Act& act, const std::filesystem::path& file, const FakeClock& clock) {
    outcome.store.reset();
    for (int attempt = 0; attempt < 2; ++attempt) {
        const auto opened = Store::open(file, clock, OpenMode::read_only);
        const auto book = opened ? read_book(opened.value()) : Result<Book>{opened.error()};
        if (!book) {
            note(outcome, act, book.error());
            continue;
        }
        if (std::find(outcome.allowed.begin(), outcome.allowed.end(), book.value()) ==
            outcome.allowed.end()) {
            outcome.wrong = "viewed read-only it says something else";
        }
        return;
    }
}

}  // namespace

Act view_act() {
    auto act = reopen_act();
    act.views = true;
    return act;
}

Act reopen_act() {
    return {"close and open"};
}

Act mark_act(const std::string& visit, const std::string& mark, int second) {
    const auto pressed =
        sample_mark(mark, second % 2 == 0 ? MarkKind::pump_start : MarkKind::far_end_drips, second);
    return {"mark " + mark, [=](Store& store) { return store.add_mark(Id{visit}, pressed); },
            [=](Book& book) { book.add_mark(Id{visit}, pressed); }};
}

Act undone_act(const std::string& mark, bool undone) {
    return {(undone ? "undo " : "redo ") + mark,
            [=](Store& store) { return store.set_undone(Id{mark}, undone); },
            [=](Book& book) { book.set_undone(Id{mark}, undone); }};
}

std::vector<Act> whole_visit() {
    auto farm = sample_farm();
    farm.customer = "Orsolya Tamblyn";
    auto house = sample_house();
    house.banks[0].length = entered<Length>("19 m");
    return {
        save_act(sample_farm()),
        save_act(sample_house()),
        save_act(sample_template()),
        save_act(sample_visit()),
        mark_act("visit-1", "m1", 0),
        mark_act("visit-1", "m2", 41),
        undone_act("m2", true),
        undone_act("m2", false),
        mark_act("visit-1", "m3", 63),
        save_act(with_points("visit-1", {"nozzle 3"})),
        save_act(farm),
        save_act(house),
        reopen_act(),
        mark_act("visit-1", "m4", 90),
        undone_act("m4", true),
        save_act(with_points("visit-1", {"nozzle 3", std::string(6000, 'x')})),
        import_act(),
        save_act(signed_off(with_points("visit-1", {"nozzle 3"}))),
        save_act(correction()),
        mark_act("visit-2", "m5", 3700),
        view_act(),
        mark_act("visit-2", "m6", 3741),
        save_act(signed_off(correction())),
    };
}

std::vector<Act> short_visit() {
    return {
        save_act(sample_farm()),
        save_act(sample_house()),
        save_act(sample_visit()),
        mark_act("visit-1", "m1", 0),
        undone_act("m1", true),
        save_act(with_points("visit-1", {"nozzle 3"})),
        reopen_act(),
        mark_act("visit-1", "m2", 41),
        save_act(signed_off(with_points("visit-1", {"nozzle 3"}))),
    };
}

std::vector<Act> visit_after_migration() {
    auto farm = sample_farm();
    farm.customer = "Somebody else";
    return {mark_act("visit-2", "new-1", 100'000), undone_act("new-1", true), save_act(farm), reopen_act(),
            mark_act("visit-2", "new-2", 100'041)};
}

Outcome perform(const std::vector<Act>& acts, const std::filesystem::path& file, FakeClock& clock,
                const Book& before, const Listener& listener) {
    Outcome outcome;
    outcome.allowed = {before};
    std::vector<Book> seen{before};  // what the open file may say
    const auto first = reopen_act();
    listener.begins(first);
    open(outcome, first, file, clock);
    for (const auto& act : acts) {
        if (!outcome.store) {
            break;
        }
        clock.advance_ms(1);
        listener.begins(act);
        if (!act.work) {
            if (act.views) {
                view(outcome, act, file, clock);
            }
            open(outcome, act, file, clock);
            seen = outcome.allowed;
            continue;
        }
        auto with_it = seen;
        for (auto& book : with_it) {
            act.effect(book);
        }
        bool done = false;
        bool in_doubt = false;
        for (int attempt = 0; attempt < 2 && !done; ++attempt) {
            const auto result = act.work(*outcome.store);
            done = result.has_value();
            if (!done && !note(outcome, act, result.error())) {
                break;
            }
            in_doubt = true;
        }
        if (done) {
            listener.acknowledged();
            seen = with_it;
            outcome.allowed = with_it;
        } else if (in_doubt) {
            for (const auto& book : with_it) {
                if (std::find(outcome.allowed.begin(), outcome.allowed.end(), book) ==
                    outcome.allowed.end()) {
                    outcome.allowed.push_back(book);
                }
            }
        }
    }
    return outcome;
}

}  // namespace wetfront::test
