// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>

#include "records/json_text.h"
#include "store/bundle_text.h"
#include "store/record_kind.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// Says of an entry that another device wrote whether the record can take it in: everything in it is known to
/// this version, what it refers to is here, and its row says what its content says. Such an entry breaks none
/// of the file's own rules. Keeps the state that the last revisions made, which the next ones change.
class EntryJudge {
public:
    explicit EntryJudge(Statements& sql) : sql_{sql} {}

    /// Empty if it can be taken in, or why it has to be kept aside. An error if it says something else than
    /// what the record holds under the same id: no order of arrival could settle that.
    [[nodiscard]] Result<std::string> why_not(const BundleEntry& entry);

    /// The entry that why_not() was asked of last was taken in.
    void taken_in();

private:
    // A Json's move may throw, as its keys are copied.
    struct State {  // NOLINT(bugprone-exception-escape)
        std::string revision;
        RecordKind kind{};
        std::string record;
        std::int64_t number = 0;
        bool is_signed = false;
        Json document;
    };

    [[nodiscard]] Result<std::string> of_revision(const Fields& fields);
    [[nodiscard]] Result<std::string> of_mark(const Fields& fields);
    [[nodiscard]] Result<std::string> of_mark_change(const Fields& fields);
    [[nodiscard]] Result<std::string> of_removal(const Fields& fields);
    [[nodiscard]] Result<std::string> of_sheet(const Fields& fields);
    [[nodiscard]] Result<std::string> of_picture(const Fields& fields);

    [[nodiscard]] bool knows(const std::string& table, const Fields& fields);
    [[nodiscard]] bool has_record(RecordKind kind, const std::string& record);
    [[nodiscard]] State* state_of(const std::string& revision);
    [[nodiscard]] std::string why_not_following(const State* parent, const State& made);
    [[nodiscard]] std::string why_not_referring(const Fields& fields, const State& made);
    [[nodiscard]] Result<std::string> why_not_beside(const char* table, const char* key,
                                                     const std::string& id, const Fields& fields,
                                                     const char* aside);

    Statements& sql_;
    std::map<std::string, std::set<std::string>> columns_;
    std::unordered_map<std::string, State> states_;  ///< by revision
    std::optional<State> made_;                      ///< by the revision that was judged last
    std::set<std::pair<RecordKind, std::string>> records_;
};

}  // namespace wetfront::store_detail
