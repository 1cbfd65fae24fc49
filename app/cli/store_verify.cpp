// SPDX-License-Identifier: Apache-2.0
#include "store/verify.h"

#include <algorithm>
#include <ostream>

#include "cli/results.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"

namespace wetfront {
namespace {

JsonObject as_json(const StoreVerdict& verdict) {
    JsonObject checks = JsonObject::array();
    for (const auto& check : verdict.checks) {
        JsonObject first = nullptr;
        if (check.wrong > 0) {
            first = {{"device", nullptr}, {"entry", nullptr}, {"what", check.first_wrong}};
            if (check.first_entry) {
                first["device"] = check.first_entry->device.text;
                first["entry"] = check.first_entry->number;
            }
        }
        checks.push_back({{"check", check.name},
                          {"says", check.says},
                          {"checked", check.checked},
                          {"wrong", check.wrong},
                          {"first_wrong", std::move(first)}});
    }
    JsonObject chains = JsonObject::array();
    for (const auto& head : verdict.heads) {
        chains.push_back({{"device", head.device.text},
                          {"last_entry", head.number},
                          {"hash", head.hash},
                          {"missing", head.missing}});
    }
    return {{"sound", verdict.sound()}, {"checks", std::move(checks)}, {"chains", std::move(chains)}};
}

void print_text(std::ostream& out, const StoreVerdict& verdict) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& check : verdict.checks) {
        rows.push_back({check.name, check.wrong == 0 ? "good" : "WRONG",
                        std::to_string(check.checked) + " checked",
                        check.wrong == 0 ? check.says : std::to_string(check.wrong) + " wrong"});
    }
    print_table(out, rows);
    for (const auto& check : verdict.checks) {
        if (check.wrong > 0) {
            out << "first wrong in " << check.name << ": ";
            if (check.first_entry) {
                out << "entry " << check.first_entry->number << " of device "
                    << printable(check.first_entry->device.text) << ": ";
            }
            out << printable(check.first_wrong, 300) << '\n';
        }
    }
    for (const auto& head : verdict.heads) {
        out << "last entry of device " << printable(head.device.text) << ": " << head.number
            << (head.missing > 0 ? " (" + std::to_string(head.missing) + " before it are not here)" : "")
            << "\n  " << head.hash << '\n';
    }
    out << (verdict.sound()
                ? "All of it is good. Cut-off last entries show only against a hash noted elsewhere.\n"
                : "Leave the file as it is, with what stands beside it, and go back to a good copy.\n");
}

Result<std::optional<std::string>> known_hash(const std::string& text) {
    if (text.empty()) {
        return std::optional<std::string>{};
    }
    const bool is_hash = text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
    if (!is_hash) {
        return bad_input("--known", text, "a hash as store verify prints it: 64 of 0-9 and a-f");
    }
    return std::optional{text};
}

Result<ExitStatus> run_verify(const std::string& known, const Common& common) {
    WF_TRY(const auto hash, known_hash(known));
    WF_CHECK(check_store_named(common));
    WF_TRY(const auto verdict, verify_store(common.store, common.surroundings.clock, hash));
    if (common.json) {
        print_json(common.out(), as_json(verdict));
    } else {
        print_text(common.out(), verdict);
    }
    return verdict.sound() ? ExitStatus::done : ExitStatus::found;
}

}  // namespace

void add_store_verify(CLI::App& store, const Common& common, Work& chosen) {
    auto* command =
        store.add_subcommand("verify", "checks every entry; says what was checked and what is wrong");
    const auto known = std::make_shared<std::string>();
    command
        ->add_option("--known", *known,
                     "a hash that verify printed earlier: is that entry still there and everything before it "
                     "unchanged?")
        ->type_name("HASH");
    command->footer(
        "Exit status: 0 all is good, 1 something is wrong, 3 the file cannot be read.\n"
        "The last hash of each device, noted on paper or in the office, later proves that nothing up to it "
        "was\n"
        "changed or cut off; from the file alone a cut at its end cannot be told.\n"
        "Example: wetfront-cli store verify --store records.db");
    command->callback(
        [&common, &chosen, known] { chosen = [&common, known] { return run_verify(*known, common); }; });
}

}  // namespace wetfront
