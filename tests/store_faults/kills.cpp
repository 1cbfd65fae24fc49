// SPDX-License-Identifier: Apache-2.0
#include "kills.h"

#include <algorithm>
#include <ostream>
#include <random>
#include <vector>

#include "act.h"
#include "book.h"
#include "core/store/child.h"
#include "core/store/samples.h"

namespace wetfront::test {
namespace {

constexpr int kills_of_a_file = 25;
constexpr int acts_of_a_visit = 20;

Visit numbered_visit(int number) {
    auto visit = sample_visit("visit-" + std::to_string(number));
    visit.started.unix_ms += number * 60'000LL;
    return visit;
}

/// The nth entry of a writer that never ends: visit after visit, each signed before the next begins.
Act nth_act(int n) {
    if (n == 0) {
        return save_act(sample_farm());
    }
    if (n == 1) {
        return save_act(sample_house());
    }
    const int step = (n - 2) % acts_of_a_visit;
    auto visit = numbered_visit((n - 2) / acts_of_a_visit);
    const auto mark = [](int number) { return "m" + std::to_string(number); };
    if (step == 0) {
        return save_act(visit);
    }
    // Points stay from one save to the next, as they do in the program.
    for (const int save : {6, 13, 19}) {
        if (save <= step) {
            visit.open_points.push_back("seen at entry " + std::to_string(n - step + save));
        }
    }
    if (step == 6 || step == 13) {
        return save_act(visit);
    }
    if (step == 19) {
        visit.signatures = {sample_signature()};
        return save_act(visit);
    }
    if (step == 8 || step == 9) {
        return undone_act(mark(n - step + 7), step == 8);
    }
    return mark_act(visit.id.text, mark(n), n);
}

/// Says "open", then each entry's number once it is acknowledged. Closes and opens the file now and then.
void write_for_ever(const std::filesystem::path& file, int next, const Child::Say& say) {
    const FakeClock clock;
    for (;; say("closed")) {
        auto store = value_of(Store::open(file, clock));
        say("open");
        do {
            succeed(nth_act(next).work(store));
            say(std::to_string(next));
            ++next;
        } while (next % 11 != 0);
    }
}

struct Heard {
    int acknowledged = 0;  ///< entries that the file must hold
    bool opened = false;
    std::string wrong;
};

void listen(Heard& heard, const std::string& line) {
    if (line == "open") {
        heard.opened = true;
    } else if (line == std::to_string(heard.acknowledged)) {
        ++heard.acknowledged;
    } else if (line != "closed") {
        heard.wrong = "the writer says: " + line;
    }
}

int drafts_in(const std::filesystem::path& folder) {
    const std::filesystem::directory_iterator files{folder};
    return static_cast<int>(std::count_if(begin(files), end(files), [](const auto& entry) {
        return entry.path().string().find(".unfinished-") != std::string::npos;
    }));
}

Heard write_until_killed(const std::filesystem::path& file, int present, std::mt19937& random) {
    Heard heard{present, false, {}};
    Child writer{[&](const Child::Say& say) { write_for_ever(file, present, say); }};
    auto lines = random() % 12;
    for (std::string line; lines > 0 && heard.wrong.empty() && !(line = writer.line()).empty(); --lines) {
        listen(heard, line);
    }
    for (auto turns = random() % 400'000; turns > 0; --turns) {
        [[maybe_unused]] volatile bool moment = true;
    }
    writer.kill();
    for (std::string line; heard.wrong.empty() && !(line = writer.line()).empty();) {
        listen(heard, line);
    }
    return heard;
}

}  // namespace

KillCounts kill_writers(int kills, unsigned seed, std::ostream* progress) {
    KillCounts counts;
    std::mt19937 random{seed};
    while (counts.kills < kills) {
        const StoreFolder folder;
        ++counts.files;
        Book book;
        int present = 0;
        const int last = std::min(kills, counts.kills + kills_of_a_file);
        while (counts.kills < last) {
            const auto heard = write_until_killed(folder.file(), present, random);
            ++counts.kills;
            counts.while_opening += heard.opened ? 0 : 1;
            counts.drafts += drafts_in(folder.path());
            for (; present < heard.acknowledged; ++present) {
                nth_act(present).effect(book);
            }
            std::vector<Book> allowed{book, book};
            nth_act(present).effect(allowed[1]);
            counts.wrong = heard.wrong.empty() ? judge(folder.file(), allowed) : heard.wrong;
            if (counts.wrong.empty() && drafts_in(folder.path()) > 0) {
                counts.wrong = "a draft is left";
            }
            if (!counts.wrong.empty()) {
                counts.wrong +=
                    " (seed " + std::to_string(seed) + ", kill " + std::to_string(counts.kills) + ")";
                return counts;
            }
            const FakeClock clock;
            if (value_of(read_book(value_of(Store::open(folder.file(), clock)))) == allowed[1]) {
                book = allowed[1];
                ++present;
                ++counts.in_the_middle;
            }
            if (progress != nullptr && counts.kills % 500 == 0) {
                *progress << counts.kills << " kills" << std::endl;
            }
        }
        counts.acknowledged += present;
        for (const auto& visit : book.visits) {
            counts.marks += static_cast<long>(visit.marks.size());
        }
    }
    return counts;
}

std::string text_of(const KillCounts& counts) {
    return std::to_string(counts.kills) + " kills over " + std::to_string(counts.files) + " files, " +
           std::to_string(counts.while_opening) + " of them while the file was made or opened (" +
           std::to_string(counts.drafts) +
           " drafts left, and removed by the next start): " + std::to_string(counts.acknowledged) +
           " entries kept, " + std::to_string(counts.marks) + " of them marks; " +
           std::to_string(counts.in_the_middle) +
           " written whole but killed before they were acknowledged; " +
           (counts.wrong.empty() ? "none lost, none doubled" : "WRONG: " + counts.wrong);
}

}  // namespace wetfront::test
