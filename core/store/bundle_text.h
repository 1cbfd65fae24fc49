// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "store/chain.h"

// Not for other folders.
//
// The text of bundles and receipts. One JSON object, laid out in lines so that it can be checked before
// anything of it is looked at, and by any other program:
//
//   {"format":"wetfront bundle","format_version":1,"sha256":"<64 letters>","content":
//   <the content: one JSON object, in one or more lines>
//   }
//
// The SHA-256 is that of the bytes between the first line and the last, newline included:
// tail -n +2 FILE | head -n -1 | sha256sum. Each line ends with a newline, the last too.
//
// The content of a bundle is one line about it, then a line for each entry, then "]}":
//
//   {"from":"<device>","made":"<time>","devices":[{"id":..,"name":..,"made":..},..],"entries":[
//   {"device":..,"number":..,"unix_ms":..,"utc_offset_min":..,"before":..,"hash":..,"table":..,"fields":{..}},
//   {...}
//   ]}
//
// An entry stands there as its hash covers it (chain.h): `fields` has a key for each line of its step 3, text
// as text, a whole number as a number, bytes as {"base64":".."}. `before` is the hash of the same device's
// entry before it; it is left out where that is the line before, and for number 1. What refers to another row
// of the record comes behind it, if both are in the bundle.
namespace wetfront::store_detail {

constexpr int bundle_format_version = 1;
/// Largest file that is read: 512 MiB.
constexpr std::size_t most_bundle_bytes = std::size_t{512} * 1024 * 1024;
/// Longest line of an entry: a sheet of 24 MiB.
constexpr std::size_t most_line_bytes = std::size_t{32} * 1024 * 1024;
constexpr std::size_t most_devices = 10'000;

struct BundleDevice {
    Id id;
    std::string name;
    WallTime made;
    friend bool operator==(const BundleDevice&, const BundleDevice&) = default;
};

struct BundleHead {
    Id from;  ///< the device that made it
    WallTime made;
    std::vector<BundleDevice> devices;  ///< those whose entries are in it, and `from`
    friend bool operator==(const BundleHead&, const BundleHead&) = default;
};

struct BundleEntry {
    EntryHead head;
    Hash before{};
    Hash hash{};
    Content content;

    [[nodiscard]] bool is_what_was_written() const {
        return hash == entry_hash(before, head, content.table, content.fields);
    }
    friend bool operator==(const BundleEntry&, const BundleEntry&) = default;
};

/// What a file of that format holds, once its layout, version and hash are those of a whole one. `format` is
/// "wetfront bundle" or "wetfront receipt". The content is a part of `text`.
struct Unsealed {
    std::string_view content;
    std::string sha256;  ///< 64 letters
};
[[nodiscard]] Result<Unsealed> unsealed(std::string_view text, std::string_view format);
/// `content` has to end with a newline.
[[nodiscard]] std::string sealed(std::string_view content, std::string_view format);

/// Reads a bundle's content from front to back, one entry at a time. Refuses what the format does not have: a
/// key that it does not know or that stands twice, deeper nesting, longer lines, what is missing.
class BundleReader {
public:
    /// `content` must outlive the reader.
    [[nodiscard]] static Result<BundleReader> begin(std::string_view content);

    [[nodiscard]] const BundleHead& head() const { return head_; }
    /// None behind the last one.
    [[nodiscard]] Result<std::optional<BundleEntry>> next();

private:
    explicit BundleReader(std::string_view content) : rest_{content} {}
    [[nodiscard]] std::optional<std::string_view> take_line();

    std::string_view rest_;
    BundleHead head_;
    std::int64_t number_ = 0;  ///< of the entries read so far
    bool more_ = false;        ///< the last line ended with a comma
    EntryHead last_;
    Hash last_hash_{};
};

/// Writes a bundle's content, one entry after the other.
class BundleWriter {
public:
    void add(const BundleEntry& entry);
    /// All of it, once it is known whose entries it holds.
    [[nodiscard]] std::string content(const BundleHead& head) const;
    /// Of the entries so far.
    [[nodiscard]] std::size_t bytes() const { return text_.size(); }

private:
    std::string text_;
    bool any_ = false;
    EntryHead last_;
};

/// `fields` of an entry as one JSON object, and back.
[[nodiscard]] std::string fields_text(const Fields& fields);
[[nodiscard]] Result<Fields> parse_fields(std::string_view text, const std::string& item);

[[nodiscard]] std::optional<Hash> hash_of_hex(std::string_view text);

}  // namespace wetfront::store_detail
