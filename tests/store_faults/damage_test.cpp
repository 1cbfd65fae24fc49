// SPDX-License-Identifier: Apache-2.0
// Bytes that change and files that end too early.
#include <gmock/gmock.h>
#include <unistd.h>

#include <fstream>
#include <iostream>
#include <random>
#include <sstream>

#include "act.h"
#include "book.h"
#include "core/store/child.h"
#include "core/store/samples.h"
#include "watched_disk.h"

namespace wetfront::test {
namespace {

constexpr std::size_t page = 4096;
constexpr std::size_t wal_header = 32;
constexpr std::size_t frame_size = 24 + page;
constexpr unsigned longest_seconds = 30;

using ::testing::IsEmpty;

enum class Verdict {
    same,     ///< nothing was lost or changed
    said,     ///< refused with the reason
    told,     ///< reads as something else; what the opening says of it or `store verify` tells
    older,    ///< an earlier state, and nobody tells
    another,  ///< a state that never was, and nobody tells
};

/// What the file says when it is opened and read. `history`: what it said after each act, the last one last.
/// `problem` gets what must never be. `loss`: whether the opening told of one.
Verdict reading(const std::filesystem::path& file, const std::vector<Book>& history, std::string& problem,
                bool& loss) {
    const FakeClock clock;
    const auto store = Store::open(file, clock);
    const auto book = store ? read_book(store.value()) : Result<Book>{store.error()};
    if (store && store.value().loss()) {
        loss = true;
        problem = vague_in(*store.value().loss(), file);
    }
    if (!book && book.error().kind == Error::Kind::bad_input) {
        return Verdict::another;  // a record that is listed and not found
    }
    if (!book) {
        problem = vague_in(book.error(), file);
        if (!problem.empty()) {
            problem += ": " + book.error().text();
        }
        return Verdict::said;
    }
    if (book.value() == history.back()) {
        return Verdict::same;
    }
    return std::find(history.begin(), history.end(), book.value()) != history.end() ? Verdict::older
                                                                                    : Verdict::another;
}

Verdict verdict(const std::filesystem::path& file, const std::vector<Book>& history, std::string& problem) {
    bool loss = false;
    const auto read = reading(file, history, problem, loss);
    const bool differs = read == Verdict::older || read == Verdict::another;
    return differs && (loss || !told_by_verify(file).empty()) ? Verdict::told : read;
}

struct Damage {
    std::string what;
    std::string file;
    std::string wal;
    bool may_be_older = false;  ///< without a word: it looks like lost power
};

struct DamageCounts {
    int cases = 0;
    std::array<int, 5> verdicts{};
    std::vector<std::string> untold;
    std::string wrong;

    [[nodiscard]] int of(Verdict verdict) const { return verdicts[static_cast<std::size_t>(verdict)]; }
};

/// In a process of its own, so that a crash or a hang names its case.
DamageCounts examine(const std::vector<Damage>& cases, const std::vector<Book>& history) {
    DamageCounts counts;
    Child reader{[&](const Child::Say& say) {
        const WatchedDisk disk;  // syncs nothing, which takes most of the time
        for (const auto& damage : cases) {
            say("begin " + damage.what);
            ::alarm(longest_seconds);
            const StoreFolder folder;
            std::ofstream{folder.file(), std::ios::binary} << damage.file;
            if (!damage.wal.empty()) {
                std::ofstream{folder.file().string() + "-wal", std::ios::binary} << damage.wal;
            }
            std::string problem;
            const auto found = verdict(folder.file(), history, problem);
            say("end " + std::to_string(static_cast<int>(found)) + " " + problem);
        }
        say("done");
    }};
    std::string last;
    for (std::string line; !(line = reader.line()).empty();) {
        if (line == "done") {
            return counts;
        }
        if (line.starts_with("begin ")) {
            last = line.substr(6);
            continue;
        }
        if (!line.starts_with("end ")) {
            counts.wrong = last + ": " + line;
            return counts;
        }
        const auto& damage = cases[static_cast<std::size_t>(counts.cases++)];
        const auto found = static_cast<Verdict>(line[4] - '0');
        ++counts.verdicts[static_cast<std::size_t>(found)];
        if (found == Verdict::another || (found == Verdict::older && !damage.may_be_older)) {
            counts.untold.push_back(damage.what);
        }
        if (line.size() > 6) {
            counts.wrong = last + ": " + line.substr(6);
            return counts;
        }
    }
    counts.wrong = "a crash, or longer than " + std::to_string(longest_seconds) + " s: " + last;
    return counts;
}

void tell(const char* what, const DamageCounts& counts) {
    std::cout << counts.cases << " " << what << ": " << counts.of(Verdict::same) << " without effect, "
              << counts.of(Verdict::said) << " refused with the reason, " << counts.of(Verdict::told)
              << " read as something else and told, " << counts.of(Verdict::older)
              << " read as an earlier state, " << counts.of(Verdict::another)
              << " as one that never was, and nobody tells\n";
}

class DamageTest : public testing::Test {
protected:
    void SetUp() override {
        const StoreFolder folder;
        const StoreFolder copies;
        const auto acts = whole_visit();
        Book book;
        history = {book};
        for (const auto& act : acts) {
            act.effect(book);
            history.push_back(book);
        }
        FakeClock clock;
        {
            const auto outcome = perform(acts, folder.file(), clock);
            ASSERT_EQ(outcome.allowed, std::vector{book});
        }
        closed = bytes_of(folder.file());
        // Up to the crash a program writes longer than from one act of closing to the next.
        auto session = acts;
        std::erase_if(session, [](const Act& act) { return act.views; });
        const StoreFolder crashed;
        const auto outcome = perform(session, crashed.file(), clock);
        ASSERT_EQ(outcome.allowed, std::vector{book});
        open_file = bytes_of(crashed.file());
        open_wal = bytes_of(crashed.file().string() + "-wal");
        ASSERT_EQ(open_wal.size() % frame_size, wal_header);
    }

    [[nodiscard]] std::string flipped(const std::string& bytes, std::size_t at) {
        auto changed = bytes;
        changed[at] = static_cast<char>(changed[at] ^ (1 << random() % 8));
        return changed;
    }

    std::mt19937 random{3};
    std::vector<Book> history;
    std::string closed;     ///< the file after a clean close
    std::string open_file;  ///< the file and its journal while the program runs
    std::string open_wal;
};

TEST_F(DamageTest, a_byte_of_a_page_or_cell_header_is_read_right_or_said) {
    std::vector<Damage> cases;
    for (std::size_t start = 0; start < closed.size(); start += page) {
        // The file's own head, then that of the page and the pointers to its cells
        // (sqlite.org/fileformat2.html, 1.6).
        const std::size_t head = start == 0 ? 100 : 0;
        for (std::size_t at = 0; at < head + 12 + 24; ++at) {
            cases.push_back({"byte " + std::to_string(start + at), flipped(closed, start + at), {}});
        }
        // The heads of cells lie where those pointers lead.
        for (std::size_t cell = 0; cell < 12; ++cell) {
            const auto pointer = start + head + 8 + 2 * cell;
            const auto at = start + static_cast<unsigned char>(closed[pointer]) * 256U +
                            static_cast<unsigned char>(closed[pointer + 1]);
            for (std::size_t byte = at; byte < at + 3 && byte < closed.size(); ++byte) {
                cases.push_back({"cell byte " + std::to_string(byte), flipped(closed, byte), {}});
            }
        }
    }
    const auto counts = examine(cases, history);
    tell("flipped bits in heads", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_EQ(counts.cases, static_cast<int>(cases.size()));
    EXPECT_THAT(counts.untold, IsEmpty());
    EXPECT_GT(counts.of(Verdict::said), 100);
}

TEST_F(DamageTest, any_byte_of_the_file_is_read_or_said) {
    std::vector<Damage> cases;
    for (int i = 0; i < 1500; ++i) {
        const auto at = random() % closed.size();
        cases.push_back({"byte " + std::to_string(at), flipped(closed, at), {}});
    }
    const auto counts = examine(cases, history);
    tell("flipped bits anywhere", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_THAT(counts.untold, IsEmpty());
    EXPECT_EQ(counts.cases, static_cast<int>(cases.size()));
}

TEST_F(DamageTest, a_file_cut_short_is_said_to_be_damaged) {
    std::vector<Damage> cases;
    for (std::size_t size = page; size < closed.size(); size += page) {
        cases.push_back({"cut to " + std::to_string(size), closed.substr(0, size), {}});
        cases.push_back({"cut to " + std::to_string(size + 1), closed.substr(0, size + 1), {}});
        cases.push_back({"cut to " + std::to_string(size - 1), closed.substr(0, size - 1), {}});
    }
    for (int i = 0; i < 200; ++i) {
        const auto size = random() % closed.size();
        cases.push_back({"cut to " + std::to_string(size), closed.substr(0, size), {}});
    }
    const auto counts = examine(cases, history);
    tell("cuts of the file", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_EQ(counts.of(Verdict::said), static_cast<int>(cases.size()));
}

TEST_F(DamageTest, a_wrong_byte_of_the_journal_is_told_unless_it_looks_like_lost_power) {
    // sqlite.org/fileformat2.html, 4.1: the frame that ends a commit says at byte 4 how large the file then
    // is.
    std::vector<std::size_t> commits;
    for (std::size_t frame = wal_header; frame < open_wal.size(); frame += frame_size) {
        if (open_wal.substr(frame + 4, 4) != std::string(4, '\0')) {
            commits.push_back(frame);
        }
    }
    ASSERT_GT(commits.size(), 5U);
    ASSERT_EQ(commits.back() + frame_size, open_wal.size());
    // Power that goes while the last commit is written takes any of its frames and leaves the others.
    const auto certain = commits[commits.size() - 2] - frame_size;
    std::vector<Damage> cases;
    const auto flip = [&](std::size_t at) {
        cases.push_back(
            {"journal byte " + std::to_string(at), open_file, flipped(open_wal, at), at >= certain});
    };
    for (std::size_t at = 0; at < wal_header; ++at) {
        flip(at);
    }
    for (std::size_t frame = wal_header; frame < open_wal.size(); frame += frame_size) {
        // In each field of its head: page, size of the file, salts, checksum.
        for (const std::size_t field : {0, 4, 8, 12, 16, 20}) {
            flip(frame + field + random() % 4);
        }
    }
    for (int i = 0; i < 200; ++i) {
        flip(random() % open_wal.size());
    }
    const auto counts = examine(cases, history);
    tell("flipped bits of the journal", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_THAT(counts.untold, IsEmpty());
    EXPECT_EQ(counts.cases, static_cast<int>(cases.size()));
    EXPECT_GT(counts.of(Verdict::told), counts.cases / 2);
}

TEST_F(DamageTest, a_journal_cut_short_gives_an_earlier_state) {
    std::vector<Damage> cases;
    const auto cut = [&](std::size_t size) {
        cases.push_back(
            {"journal cut to " + std::to_string(size), open_file, open_wal.substr(0, size), true});
    };
    for (std::size_t frame = wal_header; frame < open_wal.size(); frame += frame_size) {
        cut(frame);
    }
    for (int i = 0; i < 150; ++i) {
        cut(random() % open_wal.size());
    }
    const auto counts = examine(cases, history);
    tell("cuts of the journal", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_THAT(counts.untold, IsEmpty());
    EXPECT_EQ(counts.of(Verdict::told), 0);
    EXPECT_EQ(counts.cases, static_cast<int>(cases.size()));
}

}  // namespace
}  // namespace wetfront::test
