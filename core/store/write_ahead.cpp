// SPDX-License-Identifier: Apache-2.0
#include "store/write_ahead.h"

#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>

namespace wetfront::store_detail {
namespace {

constexpr std::size_t header_size = 32;
constexpr std::size_t frame_head = 24;
constexpr std::uint32_t magic = 0x377F'0682;  // one more if checksums take their words big end first
constexpr std::uint32_t version = 3'007'000;

std::uint32_t word_at(std::string_view bytes, std::size_t at, bool big) {
    std::uint32_t word = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        word = word << 8U | static_cast<unsigned char>(bytes[at + (big ? i : 3 - i)]);
    }
    return word;
}

struct Sums {
    std::uint32_t first = 0;
    std::uint32_t second = 0;

    friend bool operator==(const Sums&, const Sums&) = default;
};

Sums sums_at(std::string_view bytes, std::size_t at) {
    return {word_at(bytes, at, true), word_at(bytes, at + 4, true)};
}

/// sqlite.org/fileformat2.html, 4.2.
Sums continued(Sums sums, std::string_view bytes, bool big) {
    for (std::size_t at = 0; at < bytes.size(); at += 8) {
        sums.first += word_at(bytes, at, big) + sums.second;
        sums.second += word_at(bytes, at + 4, big) + sums.first;
    }
    return sums;
}

class Frames {
public:
    Frames(std::string_view bytes, std::size_t page, bool big)
        : bytes_{bytes.substr(header_size)}, size_{frame_head + page}, big_{big} {}

    [[nodiscard]] std::size_t count() const { return bytes_.size() / size_; }
    [[nodiscard]] std::string_view salts(std::size_t i) const { return frame(i).substr(8, 8); }
    [[nodiscard]] Sums sums(std::size_t i) const { return sums_at(frame(i), 16); }
    [[nodiscard]] bool commits(std::size_t i) const { return word_at(frame(i), 4, true) != 0; }
    [[nodiscard]] bool continues(std::size_t i, const Sums& before) const {
        const auto head = continued(before, frame(i).substr(0, 8), big_);
        return continued(head, frame(i).substr(frame_head), big_) == sums(i);
    }
    /// Frame i is whole behind the one before it.
    [[nodiscard]] bool follows(std::size_t i) const {
        return salts(i) == salts(i - 1) && continues(i, sums(i - 1));
    }
    /// From there on, a whole frame that continues a whole one with the mark of a commit. `salts`: of all of
    /// them, where they are known.
    [[nodiscard]] bool confirmed_behind(std::size_t first,
                                        const std::optional<std::string_view>& salts) const {
        for (std::size_t i = first + 1; i + 1 < count(); ++i) {
            if (commits(i) && (!salts || this->salts(i) == *salts) && follows(i) && follows(i + 1)) {
                return true;
            }
        }
        return false;
    }

private:
    [[nodiscard]] std::string_view frame(std::size_t i) const { return bytes_.substr(i * size_, size_); }

    std::string_view bytes_;
    std::size_t size_;
    bool big_;
};

}  // namespace

WriteAhead look_at_write_ahead(const std::filesystem::path& wal, std::size_t page) {
    std::ifstream stream{wal, std::ios::binary};
    const std::string bytes{std::istreambuf_iterator<char>{stream}, {}};
    if (bytes.size() < header_size) {
        return {};
    }
    const std::string_view all = bytes;
    const bool big = (word_at(all, 0, true) & 1U) != 0;
    const Sums header = sums_at(all, 24);
    if ((word_at(all, 0, true) | 1U) != (magic | 1U) || word_at(all, 4, true) != version ||
        continued({}, all.substr(0, 24), big) != header) {
        // It is synced before the first frame, and small enough to be written whole or not at all.
        return {0, Frames{all, page, false}.confirmed_behind(0, {}) ||
                       Frames{all, page, true}.confirmed_behind(0, {})};
    }
    const Frames frames{all, page, big};
    const auto salts = all.substr(16, 8);
    std::size_t whole = 0;
    for (Sums before = header;
         whole < frames.count() && frames.salts(whole) == salts && frames.continues(whole, before); ++whole) {
        before = frames.sums(whole);
    }
    return {static_cast<std::int64_t>(whole), frames.confirmed_behind(whole, salts)};
}

}  // namespace wetfront::store_detail
