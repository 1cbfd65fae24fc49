// SPDX-License-Identifier: Apache-2.0
// Bytes that change and files that end too early.
#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>
#include <iostream>
#include <random>
#include <sstream>

#include "act.h"
#include "book.h"
#include "core/store/child.h"
#include "core/store/samples.h"

namespace wetfront::test {
namespace {

constexpr std::size_t page = 4096;
constexpr unsigned longest_seconds = 30;

enum class Verdict { same, said, older, other };

/// What comes of opening and reading the file. `history`: what it said after each act, the last one last.
/// `problem` gets what must never be.
Verdict verdict(const std::filesystem::path& file, const std::vector<Book>& history, std::string& problem) {
    const FakeClock clock;
    const auto store = Store::open(file, clock);
    const auto book = store ? read_book(store.value()) : Result<Book>{store.error()};
    if (!book && book.error().kind == Error::Kind::bad_input) {
        return Verdict::other;  // a record that is listed and not found
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
                                                                                    : Verdict::other;
}

struct Damage {
    std::string what;
    std::string file;
    std::string wal;
};

struct Counts {
    int cases = 0;
    std::array<int, 4> verdicts{};
    std::string wrong;

    [[nodiscard]] int of(Verdict verdict) const { return verdicts[static_cast<std::size_t>(verdict)]; }
};

/// In a process of its own, so that a crash or a hang names its case.
Counts examine(const std::vector<Damage>& cases, const std::vector<Book>& history) {
    Counts counts;
    Child reader{[&](const Child::Say& say) {
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
        ++counts.cases;
        ++counts.verdicts[static_cast<std::size_t>(line[4] - '0')];
        if (line.size() > 6) {
            counts.wrong = last + ": " + line.substr(6);
            return counts;
        }
    }
    counts.wrong = "a crash, or longer than " + std::to_string(longest_seconds) + " s: " + last;
    return counts;
}

void tell(const char* what, const Counts& counts) {
    std::cout << counts.cases << " " << what << ": " << counts.of(Verdict::same) << " without effect, "
              << counts.of(Verdict::said) << " refused with the reason, " << counts.of(Verdict::older)
              << " read as an earlier state, " << counts.of(Verdict::other) << " read as something else\n";
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
            open_file = bytes_of(folder.file());
            open_wal = bytes_of(folder.file().string() + "-wal");
        }
        closed = bytes_of(folder.file());
        ASSERT_GT(open_wal.size(), 3 * page);
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

TEST_F(DamageTest, a_journal_with_a_wrong_byte_or_end_never_gives_a_wrong_record) {
    std::vector<Damage> cases;
    const auto add = [&](const std::string& what, std::string wal) {
        cases.push_back({what, open_file, std::move(wal)});
    };
    for (std::size_t at = 0; at < 32; ++at) {
        add("journal byte " + std::to_string(at), flipped(open_wal, at));
    }
    for (std::size_t frame = 32; frame < open_wal.size(); frame += page + 24) {
        for (std::size_t at = frame; at < std::min(frame + 24, open_wal.size()); ++at) {
            add("journal byte " + std::to_string(at), flipped(open_wal, at));
        }
        add("journal cut to " + std::to_string(frame), open_wal.substr(0, frame));
    }
    for (int i = 0; i < 400; ++i) {
        const auto at = random() % open_wal.size();
        add("journal byte " + std::to_string(at), flipped(open_wal, at));
        const auto size = random() % open_wal.size();
        add("journal cut to " + std::to_string(size), open_wal.substr(0, size));
    }
    const auto counts = examine(cases, history);
    tell("flips and cuts of the journal", counts);
    EXPECT_EQ(counts.wrong, "");
    EXPECT_EQ(counts.of(Verdict::other), 0);
    EXPECT_EQ(counts.cases, static_cast<int>(cases.size()));
}

}  // namespace
}  // namespace wetfront::test
