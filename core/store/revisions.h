// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "records/file_shape.h"
#include "store/pen.h"
#include "store/record_kind.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// What a record is now, without its content.
struct Head {
    std::string revision;
    int number = 0;
    // Visits only:
    Id house;
    WallTime started;
    bool is_signed = false;
    std::string house_revision;  ///< present when this revision of the visit was written
    std::string farm_revision;
};

/// None if there is no such record. Of several revisions without a successor the signed one, or the one with
/// the highest number: split_records.h tells of the others.
[[nodiscard]] std::optional<Head> head_of(Statements& sql, RecordKind kind, const Id& record);

/// A record's content at a revision. Reads back to the last whole one, at most whole_every rows.
/// `Tree` is nlohmann::json, which is equal whatever the order of its keys, or Json, which records are read
/// from.
template <class Tree>
[[nodiscard]] Tree document_at(Statements& sql, const std::string& revision);
extern template nlohmann::json document_at(Statements&, const std::string&);
extern template Json document_at(Statements&, const std::string&);

/// Every so many revisions one is stored whole, as is one whose difference would not be shorter.
constexpr int whole_every = 32;

/// What is stored beside the content, for lists and joins.
struct Columns {
    std::optional<std::string> name = {};
    std::optional<Id> farm = {};
    std::optional<Id> house = {};
    std::optional<WallTime> started = {};
    std::optional<bool> is_signed = {};
    std::optional<Id> replaces = {};
    std::optional<std::string> house_revision = {};
    std::optional<std::string> farm_revision = {};
    std::optional<std::string> restores = {};  ///< the revision whose state this one brings back
};

/// Adds a revision behind `parent` (none for a record's first). Adds nothing if the content is the parent's.
void add_revision(const Pen& pen, RecordKind kind, const Id& record, const std::optional<Head>& parent,
                  const nlohmann::json& document, const Columns& columns);

}  // namespace wetfront::store_detail
