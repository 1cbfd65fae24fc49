// SPDX-License-Identifier: Apache-2.0
#include "records/json_text.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "records/record_text.h"

namespace wetfront {
namespace {

/// Builds the tree from the parser's events, so that a repeated key is seen before it replaces the first one.
class TreeBuilder : public nlohmann::json_sax<Json> {
public:
    TreeBuilder(std::string_view text, std::string_view item) : text_{text}, item_{item} {}

    [[nodiscard]] Result<Json> result() && {
        if (error_) {
            return std::move(*error_);
        }
        return std::move(root_);
    }

    bool null() override { return add(nullptr); }
    bool boolean(bool value) override { return add(value); }
    bool number_integer(number_integer_t value) override { return add(value); }
    bool number_unsigned(number_unsigned_t value) override { return add(value); }
    bool number_float(number_float_t value, const string_t&) override { return add(value); }
    bool string(string_t& value) override { return add(std::move(value)); }
    bool binary(binary_t&) override { return refuse("", "binary data has no place in a record file"); }
    bool start_object(std::size_t) override { return open(Json::object()); }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        auto& level = open_.back();
        level.key = name;
        if (level.container->contains(name)) {
            return refuse(name, "the key stands here twice; keep one");
        }
        if (level.container->size() >= most_keys) {
            return refuse(name, "more than " + std::to_string(most_keys) + " keys in one object");
        }
        return true;
    }

    bool parse_error(std::size_t position, const std::string& last_token,
                     const nlohmann::detail::exception& /*in the library's own words*/) override {
        if (position > text_.size() || last_token == "<end of file>") {
            error_ = bad_input(std::string{item_} + place(text_.size()), "",
                               "the text ends here before it is complete; get the whole file again");
            return false;
        }
        error_ = bad_input(std::string{item_} + place(position), last_token,
                           "not JSON; a record file is a JSON object with finite numbers");
        return false;
    }

private:
    struct Level {
        Json* container;
        std::string key;
    };

    bool add(Json value) { return place_value(std::move(value)) != nullptr; }

    bool open(Json container) {
        if (open_.size() >= most_levels) {
            return refuse("", "nested deeper than " + std::to_string(most_levels) + " levels");
        }
        open_.push_back({place_value(std::move(container)), {}});
        return true;
    }

    bool close() {
        open_.pop_back();
        return true;
    }

    Json* place_value(Json value) {
        if (open_.empty()) {
            root_ = std::move(value);
            return &root_;
        }
        auto& level = open_.back();
        if (level.container->is_array()) {
            level.container->push_back(std::move(value));
            return &level.container->back();
        }
        return &((*level.container)[level.key] = std::move(value));
    }

    bool refuse(std::string_view read, std::string accepted) {
        std::string path;
        for (const auto& level : open_) {
            if (level.container->is_array()) {
                // All but the innermost list already hold the item that is being read.
                const auto held = level.container->size();
                path += "[" + std::to_string(&level == &open_.back() ? held : held - 1) + "]";
            } else {
                path += (path.empty() ? "" : ".") + printable(level.key, 40);
            }
        }
        error_ = bad_input(path.empty() ? std::string{item_} : path, read, std::move(accepted));
        return false;
    }

    [[nodiscard]] std::string place(std::size_t position) const {
        const auto before = text_.substr(0, std::min(position, text_.size()));
        const auto line = std::count(before.begin(), before.end(), '\n') + 1;
        const auto line_start = before.rfind('\n');
        const auto column =
            line_start == std::string_view::npos ? before.size() : before.size() - line_start - 1;
        return " line " + std::to_string(line) + ", column " + std::to_string(column);
    }

    std::string_view text_;
    std::string_view item_;
    Json root_;
    std::vector<Level> open_;
    std::optional<Error> error_;
};

}  // namespace

Result<Json> read_json(std::string_view text, std::string_view item) {
    if (text.size() > most_file_bytes) {
        // A caller may have stopped reading here, so how long the text really is stays unsaid.
        return bad_input(std::string{item}, "",
                         "more than " + std::to_string(most_file_bytes / (std::size_t{1024} * 1024)) +
                             " MiB; a record file is smaller");
    }
    if (!is_utf8(text)) {
        return bad_input(std::string{item}, "", "not UTF-8; save the file as UTF-8");
    }
    // The parser takes a zero byte for the end of the text and would not see what follows.
    if (text.find('\0') != std::string_view::npos) {
        return bad_input(std::string{item}, "", "holds a zero byte; a record file is plain text");
    }
    TreeBuilder builder{text, item};
    Json::sax_parse(text, &builder);
    return std::move(builder).result();
}

std::string glimpse(const Json& json) {
    if (json.is_object()) {
        return "{...}";
    }
    if (json.is_array()) {
        return "[...]";
    }
    if (json.is_string()) {
        return json.get_ref<const std::string&>();
    }
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace wetfront
