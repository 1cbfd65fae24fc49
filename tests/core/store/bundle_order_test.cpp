// SPDX-License-Identifier: Apache-2.0
// The order in which bundles arrive, and how often, makes no difference.
#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <random>

#include "bundle_edits.h"

namespace wetfront::test {
namespace {

/// Some machines that work at random and send each other bundles at random. `sent` gets every bundle.
class Firm {
public:
    explicit Firm(unsigned seed) : random_{seed} {
        auto& office = machines_[0];
        succeed(office.store().save(sample_farm()));
        succeed(office.store().save(sample_house()));
        succeed(office.store().save(sample_visit()));
        sent_.push_back(office.all());
        machines_[1].take(sent_.back());
        machines_[2].take(sent_.back());
    }

    void work(int steps) {
        for (int i = 0; i < steps; ++i) {
            const auto at = draw(machines_.size());
            machines_[at].clock.advance_ms(static_cast<std::int64_t>(draw(100'000)) - 30'000);
            draw(4) == 0 ? send(at, (at + 1 + draw(2)) % 3) : enter(machines_[at]);
        }
    }

    [[nodiscard]] const std::vector<std::string>& sent() const { return sent_; }
    [[nodiscard]] std::array<Machine, 3>& machines() { return machines_; }

private:
    std::size_t draw(std::size_t below) { return random_() % below; }

    void send(std::size_t from, std::size_t to) {
        auto& sender = machines_[from];
        auto& receiver = machines_[to];
        const auto bundle = draw(3) == 0 ? sender.bundle({.houses = {Id{"house-1"}}, .sheets = draw(2) == 0})
                                         : sender.new_for(receiver);
        if (bundle.empty()) {
            return;
        }
        sent_.push_back(bundle);
        if (draw(4) == 0) {
            return;  // lost on the way
        }
        receiver.take(bundle);
        if (draw(2) == 0) {
            EXPECT_GT(value_of(sender.store().read_receipt(receiver.receipt(bundle))).entries, 0);
        }
    }

    void enter(Machine& machine) {
        auto& store = machine.store();
        const auto number = std::to_string(draw(1000));
        const auto marks = value_of(store.marks_of(Id{"visit-1"}));
        switch (draw(6)) {
            case 0: {
                auto house = value_of(store.house(Id{"house-1"}));
                house.name = "House " + number;
                return succeed(store.save(house));
            }
            case 1: {
                auto visit = value_of(store.visit(Id{"visit-1"}));
                visit.open_points.push_back("point " + number);
                return succeed(store.save(visit));
            }
            case 2: {
                const bool removed = !value_of(store.removed()).empty();
                return succeed(
                    store.set_removed(RecordKind::visit, Id{"visit-1"}, !removed && marks.empty()));
            }
            case 3:
                if (const auto split = value_of(store.split_records()); !split.empty()) {
                    return succeed(
                        store.choose_state(split[0].states[draw(split[0].states.size())].revision));
                }
                return;
            case 4:
                if (!marks.empty()) {
                    const auto& mark = marks[draw(marks.size())];
                    return succeed(store.set_undone(mark.id, !mark.undone));
                }
                return;
            default:
                return succeed(store.add_mark(
                    Id{"visit-1"},
                    sample_mark(store.new_id().text, MarkKind::pump_start, static_cast<int>(draw(99)))));
        }
    }

    std::mt19937 random_;
    std::array<Machine, 3> machines_;
    std::vector<std::string> sent_;
};

/// What a machine shows after those bundles.
struct Seen {
    std::string contents;
    std::vector<Mark> marks;
    std::string house;
    friend bool operator==(const Seen&, const Seen&) = default;
};

Seen seen_after(const std::vector<std::string>& bundles) {
    Machine machine;
    for (const auto& bundle : bundles) {
        machine.take(bundle);
    }
    EXPECT_EQ(wrong_in(machine.verdict()), "");
    auto contents = machine.contents();
    return {std::move(contents), value_of(machine.store().marks_of(Id{"visit-1"})),
            value_of(machine.store().house(Id{"house-1"})).name};
}

TEST(BundleOrder, any_permutation_and_repetition_of_bundles_gives_the_same_record) {
    int permutations = 0;
    std::size_t bundles = 0;
    for (unsigned seed = 1; seed <= 6; ++seed) {
        Firm firm{seed};
        firm.work(40);
        auto order = firm.sent();
        bundles += order.size();
        const auto first = seen_after(order);
        std::mt19937 random{seed};
        for (int round = 0; round < 5; ++round) {
            std::shuffle(order.begin(), order.end(), random);
            auto repeated = order;
            for (int again = 0; again < 4; ++again) {
                repeated.insert(repeated.begin() + static_cast<std::ptrdiff_t>(random() % repeated.size()),
                                order[random() % order.size()]);
            }
            ASSERT_EQ(seen_after(repeated), first) << "seed " << seed << ", round " << round;
            ++permutations;
        }
    }
    EXPECT_EQ(permutations, 30);
    EXPECT_GT(bundles, 40U) << "there was something to permute";
}

TEST(BundleOrder, machines_that_have_everything_of_each_other_show_the_same) {
    for (unsigned seed = 11; seed <= 14; ++seed) {
        Firm firm{seed};
        firm.work(40);
        auto& machines = firm.machines();
        std::vector<std::string> all;
        for (const auto& machine : machines) {
            all.push_back(machine.all(true));
        }
        for (auto& machine : machines) {
            for (const auto& bundle : all) {
                machine.take(bundle);
            }
        }
        const auto expected = machines[0].contents();
        EXPECT_EQ(machines[1].contents(), expected) << seed;
        EXPECT_EQ(machines[2].contents(), expected) << seed;
        for (auto& machine : machines) {
            EXPECT_EQ(wrong_in(machine.verdict()), "") << seed;
        }
    }
}

/// 500 entries: farm, house, visits with marks and changes of marks.
std::string tablet_bundle(int number) {
    const auto name = std::to_string(number);
    Machine tablet;
    auto& store = tablet.store();
    std::vector<VisitFile> files;
    auto farm = sample_farm();
    farm.id = Id{"farm-" + name};
    auto house = sample_house();
    house.id = Id{"house-" + name};
    house.farm = farm.id;
    for (int visit = 0; visit < 10; ++visit) {
        auto made = sample_visit("visit-" + name + "-" + std::to_string(visit));
        made.house = house.id;
        for (int i = 0; i < 44; ++i) {
            auto mark = sample_mark(made.id.text + "-" + std::to_string(i), MarkKind::pump_start, i);
            mark.undone = i % 9 == 0;
            made.marks.push_back(std::move(mark));
        }
        files.push_back({farm, house, std::move(made)});
    }
    files.back().visit.marks.resize(42);
    succeed(store.add(files));
    return tablet.all();
}

TEST(BundleOrder, of_200_tablets_with_500_entries_each_every_entry_is_there_once) {
    constexpr int tablets = 200;
    std::vector<std::string> bundles;
    for (int i = 0; i < tablets; ++i) {
        bundles.push_back(tablet_bundle(i));
    }
    std::shuffle(bundles.begin(), bundles.end(), std::mt19937{7});
    Machine office;
    std::int64_t added = 0;
    for (const auto& bundle : bundles) {
        const auto report = office.take(bundle);
        EXPECT_EQ(report.entries, 500);
        added += report.added;
    }
    for (int i = 0; i < tablets; i += 10) {
        EXPECT_EQ(office.take(bundles[static_cast<std::size_t>(i)]).added, 0);
    }
    EXPECT_EQ(added, 100'000);
    EXPECT_EQ(value_of(office.store().content()).entries, 100'000);
    const auto houses = value_of(office.store().houses());
    EXPECT_EQ(houses.size(), 200U);
    int visits = 0;
    for (const auto& house : houses) {
        visits += house.visits;
    }
    EXPECT_EQ(visits, 2'000);
    EXPECT_EQ(value_of(office.store().visits_of(Id{"house-7"})).at(9).marks, 39) << "44 without 5 undone";
}

}  // namespace
}  // namespace wetfront::test
