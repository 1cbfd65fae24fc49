// SPDX-License-Identifier: Apache-2.0
#include "store/bundle_text.h"

#include <sodium/utils.h>

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <nlohmann/json.hpp>

#include "records/json_text.h"

namespace wetfront::store_detail {
namespace {

std::string item_of(std::string_view format) {
    return std::string{format.substr(format.find(' ') + 1)};
}

Error not_one(std::string_view format, std::string_view read, const char* accepted) {
    return bad_input(item_of(format), read, accepted);
}

/// What stands at the front of `text`, taken off it.
bool take(std::string_view& text, std::string_view expected) {
    if (!text.starts_with(expected)) {
        return false;
    }
    text.remove_prefix(expected.size());
    return true;
}

std::string front_of(std::string_view format) {
    return R"({"format":")" + std::string{format} + R"(","format_version":)";
}

std::string json_string(std::string_view text) {
    return nlohmann::json(text).dump();
}

std::string base64_of(const std::string& bytes) {
    constexpr int variant = sodium_base64_VARIANT_ORIGINAL;
    std::string text(sodium_base64_encoded_len(bytes.size(), variant), '\0');
    sodium_bin2base64(text.data(), text.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
                      bytes.size(), variant);
    text.pop_back();  // the zero behind it
    return text;
}

std::optional<std::string> bytes_of_base64(std::string_view text) {
    std::string bytes(text.size() / 4 * 3 + 3, '\0');
    std::size_t size = 0;
    const char* end = nullptr;
    if (sodium_base642bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(), text.data(),
                          text.size(), nullptr, &size, &end, sodium_base64_VARIANT_ORIGINAL) != 0 ||
        end != text.data() + text.size()) {
        return std::nullopt;
    }
    bytes.resize(size);
    return bytes;
}

/// Takes one entry, or the fields of one, from the parser's events: nothing is built that is not kept.
class EntryEvents : public nlohmann::json_sax<nlohmann::json> {
public:
    enum class Whole { entry, fields };
    explicit EntryEvents(Whole whole) : fields_level_{whole == Whole::entry ? 2 : 1} {}

    BundleEntry entry;
    std::optional<Hash> before;
    std::string problem;  ///< empty: none

    [[nodiscard]] bool complete() const { return fields_level_ == 1 || seen_ == all_keys; }

    bool null() override { return refuse("null"); }
    bool boolean(bool) override { return refuse("true or false"); }
    bool number_float(number_float_t, const string_t& text) override { return refuse(text); }
    bool binary(binary_t&) override { return refuse("binary data"); }
    bool start_array(std::size_t) override { return refuse("a list"); }
    bool end_array() override { return refuse("a list"); }
    bool number_integer(number_integer_t value) override { return number(value); }
    bool number_unsigned(number_unsigned_t value) override {
        if (value > static_cast<number_unsigned_t>(std::numeric_limits<std::int64_t>::max())) {
            return refuse("a number that large");
        }
        return number(static_cast<std::int64_t>(value));
    }
    bool string(string_t& value) override {
        if (level_ == fields_level_) {
            return put(std::move(value));
        }
        if (level_ == fields_level_ + 1) {
            auto bytes = bytes_of_base64(value);
            if (!bytes || bytes_) {
                return refuse("bytes that are no base64");
            }
            bytes_ = Bytes{std::move(*bytes)};
            return true;
        }
        if (level_ != 1) {
            return refuse("a text");
        }
        switch (key_) {
            case Key::device:
                entry.head.device = std::move(value);
                return true;
            case Key::table:
                entry.content.table = std::move(value);
                return true;
            case Key::before:
                before = hash_of_hex(value);
                return before || refuse("a hash that is none");
            case Key::hash: {
                const auto hash = hash_of_hex(value);
                entry.hash = hash.value_or(Hash{});
                return hash || refuse("a hash that is none");
            }
            case Key::number:
            case Key::unix_ms:
            case Key::utc_offset_min:
            case Key::fields:
                break;
        }
        return refuse("a text");
    }
    bool start_object(std::size_t) override {
        const bool here = level_ == 0 || (level_ == 1 && fields_level_ == 2 && key_ == Key::fields) ||
                          (level_ == fields_level_ && !name_.empty());
        ++level_;
        return here || refuse("an object");
    }
    bool end_object() override {
        --level_;
        if (level_ == fields_level_) {
            return bytes_ ? put(std::move(*std::exchange(bytes_, {}))) : refuse("bytes without base64");
        }
        return true;
    }
    bool key(string_t& name) override {
        if (level_ == fields_level_) {
            name_ = std::move(name);
            return !entry.content.fields.contains(name_) || refuse("a key that stands twice");
        }
        if (level_ == fields_level_ + 1) {
            return name == "base64" || refuse("a key other than base64");
        }
        const auto found = std::find(keys.begin(), keys.end(), name);
        if (found == keys.end()) {
            return refuse("key " + printable(name, 40));
        }
        const auto place = static_cast<unsigned>(found - keys.begin());
        if ((seen_ & (1U << place)) != 0) {
            return refuse("a key that stands twice");
        }
        key_ = static_cast<Key>(place);
        seen_ |= key_ == Key::before ? 0U : 1U << place;
        if (key_ == Key::before && before) {
            return refuse("a key that stands twice");
        }
        return true;
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        problem = "what is not JSON";
        return false;
    }

private:
    enum class Key : unsigned { device, number, unix_ms, utc_offset_min, hash, table, fields, before };
    static constexpr std::array<std::string_view, 8> keys{"device", "number", "unix_ms", "utc_offset_min",
                                                          "hash",   "table",  "fields",  "before"};
    static constexpr unsigned all_keys = 0x7F;  ///< all but `before`

    bool refuse(std::string what) {
        problem = std::move(what);
        return false;
    }
    template <class T>
    bool put(T value) {
        entry.content.fields.insert_or_assign(name_, Value{std::move(value)});
        return true;
    }
    bool number(std::int64_t value) {
        if (level_ == fields_level_) {
            return put(value);
        }
        if (level_ != 1) {
            return refuse("a number");
        }
        switch (key_) {
            case Key::number:
                entry.head.seq = value;
                return value > 0 || refuse("a number that is not above 0");
            case Key::unix_ms:
                entry.head.at.unix_ms = value;
                return true;
            case Key::utc_offset_min:
                entry.head.at.utc_offset_minutes = static_cast<std::int32_t>(value);
                return std::abs(value) <= most_offset_minutes || refuse("an offset that is none");
            case Key::device:
            case Key::hash:
            case Key::table:
            case Key::fields:
            case Key::before:
                break;
        }
        return refuse("a number");
    }

    static constexpr std::int64_t most_offset_minutes = std::int64_t{14} * 60;
    int fields_level_;
    int level_ = 0;
    Key key_{};
    unsigned seen_ = 0;
    std::string name_;
    std::optional<Bytes> bytes_;
};

Result<void> events_of(std::string_view text, EntryEvents& events, const std::string& item) {
    if (text.size() > most_line_bytes) {
        return bad_input(item, "", "a line is longer than any that is written");
    }
    if (!is_utf8(text) || text.find('\0') != std::string_view::npos) {
        return bad_input(item, "", "it is not UTF-8 text");
    }
    if (!nlohmann::json::sax_parse(text, &events) || !events.problem.empty() || !events.complete()) {
        return bad_input(item, events.problem.empty() ? "a key is missing" : events.problem,
                         "an entry as the format of bundles has it (wetfront-cli schema bundle)");
    }
    return boost::outcome_v2::success();
}

Result<BundleDevice> device_of(const Json& json, const std::string& item) {
    const bool shape = json.is_object() && json.size() == 3 && json.contains("id") && json.contains("name") &&
                       json.contains("made") && json["id"].is_string() && json["name"].is_string() &&
                       json["made"].is_string();
    if (!shape) {
        return bad_input(item, glimpse(json), "a device has id, name and made");
    }
    BundleDevice device;
    WF_TRY(device.id, parse_id(json["id"].get_ref<const std::string&>(), item));
    device.name = json["name"].get<std::string>();
    if (printable(device.name, 256) != device.name || device.name.find_first_of("/\\") != std::string::npos) {
        return bad_input(item, device.name, "a machine's name is one line without / or \\");
    }
    WF_TRY(device.made, parse_iso8601(json["made"].get_ref<const std::string&>(), item));
    return device;
}

Result<BundleHead> head_of_line(std::string_view line) {
    const std::string item = "bundle, line 2";
    WF_TRY(const auto json, read_json(std::string{line} + "]}", item));
    const bool shape = json.is_object() && json.size() == 4 && json.contains("from") &&
                       json.contains("made") && json.contains("devices") && json.contains("entries") &&
                       json["from"].is_string() && json["made"].is_string() && json["devices"].is_array() &&
                       json["entries"].is_array() && json["entries"].empty();
    if (!shape) {
        return bad_input(item, "", "it says from which device, when it was made and whose entries it holds");
    }
    BundleHead head;
    WF_TRY(head.from, parse_id(json["from"].get_ref<const std::string&>(), item));
    WF_TRY(head.made, parse_iso8601(json["made"].get_ref<const std::string&>(), item));
    if (json["devices"].size() > most_devices) {
        return bad_input(item, "", "more than " + std::to_string(most_devices) + " devices");
    }
    for (const auto& each : json["devices"]) {
        WF_TRY(auto device, device_of(each, item));
        if (std::any_of(head.devices.begin(), head.devices.end(),
                        [&](const BundleDevice& other) { return other.id == device.id; })) {
            return bad_input(item, device.id.text, "the same device stands there twice");
        }
        head.devices.push_back(std::move(device));
    }
    return head;
}

}  // namespace

std::optional<Hash> hash_of_hex(std::string_view text) {
    Hash hash{};
    std::size_t size = 0;
    const char* end = nullptr;
    const bool lower = text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
    if (text.size() != 2 * hash.size() || !lower ||
        sodium_hex2bin(hash.data(), hash.size(), text.data(), text.size(), nullptr, &size, &end) != 0 ||
        size != hash.size()) {
        return std::nullopt;
    }
    return hash;
}

Result<Unsealed> unsealed(std::string_view text, std::string_view format) {
    constexpr const char* not_whole =
        "it ends before it is complete, or was changed; get the whole file again";
    if (text.size() > most_bundle_bytes) {
        return not_one(format, "", "it is larger than 512 MiB, which none is that this program makes");
    }
    auto rest = text;
    if (!take(rest, front_of(format))) {
        return not_one(format, text.substr(0, 40), "this is no such file of this program");
    }
    const auto digits = rest.substr(0, rest.find_first_not_of("0123456789"));
    if (digits != std::to_string(bundle_format_version)) {
        return not_one(format, digits, "it was written by a later version of the program; update this one");
    }
    rest.remove_prefix(digits.size());
    if (!take(rest, R"(,"sha256":")") || rest.size() < 64) {
        return not_one(format, "", not_whole);
    }
    const auto told = rest.substr(0, 64);
    rest.remove_prefix(64);
    if (!take(rest, "\",\"content\":\n") || !rest.ends_with("\n}\n")) {
        return not_one(format, "", not_whole);
    }
    rest.remove_suffix(2);
    if (hash_of_hex(told) != sha256(rest)) {
        return not_one(format, "", "it is not what was written: its SHA-256 is another; get the file again");
    }
    return Unsealed{rest, std::string{told}};
}

std::string sealed(std::string_view content, std::string_view format) {
    std::string text = front_of(format) + std::to_string(bundle_format_version) + R"(,"sha256":")" +
                       in_hex(sha256(content)) + "\",\"content\":\n";
    text.reserve(text.size() + content.size() + 2);
    text.append(content).append("}\n");
    return text;
}

Result<BundleReader> BundleReader::begin(std::string_view content) {
    BundleReader reader{content};
    const auto line = reader.take_line();
    if (!line || !line->ends_with("[")) {
        return bad_input("bundle, line 2", "", "it ends with the list of entries");
    }
    WF_TRY(reader.head_, head_of_line(*line));
    return reader;
}

std::optional<std::string_view> BundleReader::take_line() {
    const auto end = rest_.find('\n');
    if (end == std::string_view::npos) {
        return std::nullopt;
    }
    const auto line = rest_.substr(0, end);
    rest_.remove_prefix(end + 1);
    return line;
}

Result<std::optional<BundleEntry>> BundleReader::next() {
    auto line = take_line();
    const std::string item = "bundle, entry " + std::to_string(number_ + 1);
    if (!line) {
        return bad_input(item, "", "the list of entries does not end");
    }
    if (*line == "]}") {
        if (!rest_.empty() || more_) {
            return bad_input(item, "", "the list of entries does not end as it should");
        }
        return std::optional<BundleEntry>{};
    }
    if (number_ > 0 && !more_) {
        return bad_input(item, "", "a comma is missing before it");
    }
    more_ = line->ends_with(",");
    if (more_) {
        line->remove_suffix(1);
    }
    EntryEvents events{EntryEvents::Whole::entry};
    WF_CHECK(events_of(*line, events, item));
    auto& entry = events.entry;
    const bool follows = number_ > 0 && entry.head.device == last_.device && entry.head.seq == last_.seq + 1;
    const auto known = follows               ? std::optional{last_hash_}
                       : entry.head.seq == 1 ? std::optional{Hash{}}
                                             : std::nullopt;
    if (!events.before && !known) {
        return bad_input(item, "", "the hash of the entry before it is missing");
    }
    if (events.before && known && events.before != known) {
        return bad_input(item, "", "it does not follow the entry before it of the same device");
    }
    entry.before = known.value_or(events.before.value_or(Hash{}));
    ++number_;
    last_ = entry.head;
    last_hash_ = entry.hash;
    return std::optional{std::move(entry)};
}

void BundleWriter::add(const BundleEntry& entry) {
    const auto& head = entry.head;
    text_.append(any_ ? ",\n" : "\n");
    text_.append(R"({"device":)").append(json_string(head.device));
    text_.append(R"(,"number":)").append(std::to_string(head.seq));
    text_.append(R"(,"unix_ms":)").append(std::to_string(head.at.unix_ms));
    text_.append(R"(,"utc_offset_min":)").append(std::to_string(head.at.utc_offset_minutes));
    const bool follows = any_ && head.device == last_.device && head.seq == last_.seq + 1;
    if (!follows && head.seq != 1) {
        text_.append(R"(,"before":")").append(in_hex(entry.before)).append("\"");
    }
    text_.append(R"(,"hash":")").append(in_hex(entry.hash));
    text_.append(R"(","table":)").append(json_string(entry.content.table));
    text_.append(R"(,"fields":)").append(fields_text(entry.content.fields)).append("}");
    any_ = true;
    last_ = head;
}

std::string BundleWriter::content(const BundleHead& head) const {
    std::string text = R"({"from":)" + json_string(head.from.text) + R"(,"made":)" +
                       json_string(to_iso8601(head.made)) + R"(,"devices":[)";
    for (const auto& device : head.devices) {
        text += (&device == &head.devices.front() ? "" : ",") + (R"({"id":)" + json_string(device.id.text)) +
                R"(,"name":)" + json_string(device.name) + R"(,"made":)" +
                json_string(to_iso8601(device.made)) + "}";
    }
    text.reserve(text.size() + text_.size() + 32);
    return text.append("],\"entries\":[").append(text_).append("\n]}\n");
}

std::string fields_text(const Fields& fields) {
    std::string text = "{";
    for (const auto& [name, value] : fields) {
        if (std::holds_alternative<std::monostate>(value)) {
            continue;
        }
        text.append(text.size() == 1 ? "" : ",").append(json_string(name)).append(":");
        if (const auto* number = std::get_if<std::int64_t>(&value)) {
            text.append(std::to_string(*number));
        } else if (const auto* words = std::get_if<std::string>(&value)) {
            text.append(json_string(*words));
        } else if (const auto* raw = std::get_if<Bytes>(&value)) {
            text.append(R"({"base64":")").append(base64_of(raw->bytes)).append("\"}");
        }
    }
    return text + "}";
}

Result<Fields> parse_fields(std::string_view text, const std::string& item) {
    EntryEvents events{EntryEvents::Whole::fields};
    WF_CHECK(events_of(text, events, item));
    return std::move(events.entry.content.fields);
}

}  // namespace wetfront::store_detail
