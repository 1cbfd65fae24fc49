// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "records/field_change.h"
#include "store/record_kind.h"
#include "store/verify.h"

namespace wetfront {

// Bundles bring entries of the record file from one machine to another, in both directions; a receipt brings
// back which of them arrived. bundle_text.h describes the files.

/// What a bundle is to hold: what is named, each with all that it refers to and its whole history, all that
/// is new for a device, or everything.
struct BundleChoice {
    std::vector<Id> farms = {};  ///< with their houses
    std::vector<Id> houses =
        {};  ///< with their farm, their visits with photos, and the templates that their timers name
    std::vector<Id> templates = {};
    /// Everything that this device neither wrote nor acknowledged by a receipt. Instead of the lists.
    std::optional<Id> new_for = {};
    /// The whole record file. Instead of the lists.
    bool everything = false;
    bool sheets = false;  ///< the kept sheets of its visits too
};

struct BundleMade {
    std::filesystem::path file;
    std::string sha256;           ///< of its content: 64 letters
    std::int64_t entries = 0;     ///< 0: nothing was to be sent, and no file was made
    std::int64_t kept_aside = 0;  ///< how many of them this version cannot read, and passes on as they came
};

/// An entry that is not part of the record yet.
struct KeptAside {
    EntryName entry;
    std::string kind;  ///< of entry, as its device calls it: "revision", "mark"
    std::string why;
};

/// One of several present states of a record.
struct PresentState {
    std::string revision;
    EntryName entry;
    WallTime entered_at;
    bool is_signed = false;
};

/// A record that was changed on two devices which did not know of each other. All states are kept; the first
/// is the one that lists and sheets show until a person chooses.
struct SplitRecord {
    RecordKind kind = RecordKind::visit;
    Id record;
    std::string name;  ///< of a visit, that of its house
    std::vector<PresentState> states;
    /// What the second state has otherwise than the first: `before` is the first's.
    std::vector<FieldChange> differences;
};

/// What importing a bundle does, or would do.
struct BundleReport {
    std::string sha256;
    Id from;
    WallTime made;
    std::int64_t entries = 0;  ///< in the bundle
    std::int64_t added = 0;
    std::int64_t there = 0;  ///< were there already, whether taken in or aside
    /// Those of the bundle that are now kept aside.
    std::vector<KeptAside> aside;
    /// Entries of earlier bundles that had been kept aside and are now taken in.
    std::int64_t taken_in_later = 0;
    // Of those added, records that were not here before:
    std::int64_t farms = 0;
    std::int64_t houses = 0;
    std::int64_t visits = 0;
    std::int64_t templates = 0;
    std::int64_t marks = 0;
    /// Every record with several present states once it is in.
    std::vector<SplitRecord> split;
};

/// Another machine whose entries or receipt this record file has seen.
struct OtherDevice {
    Id id;
    std::string name;
};

/// What a receipt said.
struct ReceiptRead {
    Id receiver;
    std::int64_t entries = 0;  ///< that it acknowledges
    std::int64_t marked = 0;   ///< of these, not known as delivered before
};

/// All of a bundle's or receipt's file. Errors: not there, no plain file (a link is none), larger than 512
/// MiB, cannot be read.
[[nodiscard]] Result<std::string> read_bundle_file(const std::filesystem::path& file);

/// JSON Schema (draft 2020-12) of a bundle and of a receipt.
[[nodiscard]] std::string bundle_schema_text();
[[nodiscard]] std::string receipt_schema_text();

}  // namespace wetfront
