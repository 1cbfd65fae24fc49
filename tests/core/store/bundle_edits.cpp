// SPDX-License-Identifier: Apache-2.0
#include "bundle_edits.h"

namespace wetfront::test {

using store_detail::BundleEntry;
using store_detail::BundleReader;
using store_detail::BundleWriter;

std::vector<BundleEntry> entries_of(const std::string& bundle) {
    const auto file = value_of(store_detail::unsealed(bundle, "wetfront bundle"));
    auto reader = value_of(BundleReader::begin(file.content));
    std::vector<BundleEntry> entries;
    for (auto entry = value_of(reader.next()); entry; entry = value_of(reader.next())) {
        entries.push_back(*entry);
    }
    return entries;
}

std::string with_entries(const std::string& bundle, const std::vector<BundleEntry>& entries) {
    const auto file = value_of(store_detail::unsealed(bundle, "wetfront bundle"));
    BundleWriter writer;
    for (const auto& entry : entries) {
        writer.add(entry);
    }
    const auto head = value_of(BundleReader::begin(file.content)).head();
    return store_detail::sealed(writer.content(head), "wetfront bundle");
}

void chain_anew(std::vector<BundleEntry>& entries) {
    store_detail::Hash before{};
    std::int64_t number = 0;
    for (auto& entry : entries) {
        entry.before = before;
        entry.head.seq = ++number;
        entry.hash = entry_hash(entry.before, entry.head, entry.content.table, entry.content.fields);
        before = entry.hash;
    }
}

void enter_visit(Machine& machine, const std::string& visit) {
    auto& store = machine.store();
    succeed(store.save(sample_farm()));
    succeed(store.save(sample_house()));
    succeed(store.save(sample_visit(visit)));
    succeed(store.add_mark(Id{visit}, sample_mark(visit + "-m1", MarkKind::pump_start)));
    succeed(store.add_mark(Id{visit}, sample_mark(visit + "-m2", MarkKind::pump_stop, 9)));
    succeed(store.set_undone(Id{visit + "-m2"}, true));
}

void rename_house(Machine& machine, const std::string& name) {
    auto house = value_of(machine.store().house(Id{"house-1"}));
    house.name = name;
    succeed(machine.store().save(house));
}

}  // namespace wetfront::test
