// SPDX-License-Identifier: Apache-2.0
#include "print/sheet_pages.h"

#include <gmock/gmock.h>

#include <QDir>
#include <QTemporaryDir>
#include <set>

#include "example_sheet.h"
#include "print/blocks.h"
#include "print/pdf.h"
#include "print/type.h"

namespace wetfront::ui {
namespace {

using namespace test;

constexpr double dpi = 60.0;

bool is_ink(QRgb pixel) {
    return (pixel & 0xffffff) != 0xffffff;
}

int different_pixels(const QImage& a, const QImage& b) {
    EXPECT_EQ(a.size(), b.size());
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            count += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
        }
    }
    return count;
}

/// Ink closer to an edge of the paper than 12 mm, in pixels.
int ink_in_margins(const QImage& page) {
    const int margin = static_cast<int>(12.0 / 25.4 * dpi);
    int count = 0;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const bool inside =
                x >= margin && x < page.width() - margin && y >= margin && y < page.height() - margin;
            count += !inside && is_ink(page.pixel(x, y)) ? 1 : 0;
        }
    }
    return count;
}

void expect_clean_margins(const SheetContent& content, const std::string& what,
                          const Formatter& reader = si) {
    for (const Paper paper : {Paper::letter, Paper::a4}) {
        int number = 0;
        for (const QImage& page : preview_pages(content, paper, reader, dpi)) {
            EXPECT_EQ(ink_in_margins(page), 0) << what << ", page " << ++number;
        }
    }
}

class EachBlock : public testing::TestWithParam<std::size_t> {};

TEST_P(EachBlock, leaves_ink_on_its_page) {
    const auto without = preview_pages(sheet_of({}), Paper::letter, si, dpi);
    const auto with = preview_pages(sheet_of({example_blocks()[GetParam()]}), Paper::letter, si, dpi);
    ASSERT_EQ(with.size(), 1U);
    EXPECT_GT(different_pixels(with.front(), without.front()), 200) << "block " << GetParam();
}

INSTANTIATE_TEST_SUITE_P(SheetPagesTest, EachBlock, testing::Range(std::size_t{0}, example_blocks().size()));

TEST(SheetPagesTest, the_example_holds_every_kind_of_block) {
    std::set<std::size_t> kinds;
    for (const auto& block : example_blocks()) {
        kinds.insert(block.index());
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<SheetBlock>);
}

SheetContent with_findings(std::size_t count, const std::string& text) {
    SheetFindings findings;
    findings.findings.assign(count, {Severity::fault, verbatim(text), verbatim(text), verbatim(text), text});
    return sheet_of({SheetHeading{"Findings"}, findings});
}

TEST(SheetPagesTest, any_number_of_findings_stays_within_the_margins) {
    for (std::size_t count = 0; count <= 60; count += count < 6 ? 1 : 9) {
        expect_clean_margins(with_findings(count, "The far end stays dry."),
                             std::to_string(count) + " findings");
    }
}

TEST(SheetPagesTest, any_number_of_banks_stays_within_the_margins) {
    for (std::size_t count = 1; count <= 8; ++count) {
        SheetBanks banks;
        for (std::size_t i = 0; i < count; ++i) {
            banks.banks.push_back({verbatim("Bank " + std::to_string(i)), i % 2 == 0, 24.0, 1.5, "caption"});
        }
        expect_clean_margins(sheet_of({banks}), std::to_string(count) + " banks");
    }
}

// A name of 200 letters without a blank, and one with blanks, wherever a text can stand.
TEST(SheetPagesTest, names_of_two_hundred_letters_stay_within_the_margins) {
    std::string with_blanks;
    while (with_blanks.size() < 200) {
        with_blanks += "Wide Meadow ";
    }
    for (const std::string& name : {std::string(200, 'W'), with_blanks}) {
        const Message text = verbatim(name);
        SheetFacts facts;
        facts.facts = {{text, text}, {"short", text}, {text, "short"}};
        SheetTable table;
        table.columns = {text, text, text, text, text};
        table.rows = {{{text, true}, {text}, {text}, {text, true}, {text}}};
        SheetTimeline timeline{text, {}};
        CycleStrip strip;
        strip.label = text;
        strip.period_s = 300.0;
        strip.on_s = 85.0;
        strip.fill_s = 45.0;
        timeline.strips = {strip, strip, strip};
        SheetChecks checks;
        checks.lines = {{text, true, name}};
        SheetCautions cautions;
        cautions.lines = {{SignalWord::warning, text}};
        SheetSignatures signatures;
        signatures.lines = {{text, name, name, {{{{0, 0}, {2500, 1000}}}}}, {text, name, ""}, {text, "", ""}};
        auto content = sheet_of({SheetHeading{text}, SheetParagraph{text, true}, facts, table, timeline,
                                 SheetBanks{{{text, true, 24.0, 1.5, text}, {text, false, 24.0, 1.5, text}}},
                                 SheetFindings{{{Severity::harm, text, text, text, name}}}, checks, cautions,
                                 signatures});
        content.title = text;
        content.running_head = Message{"%1, %2, %3", {name, name, name}};
        content.id = std::string(64, 'W');
        expect_clean_margins(content, name.substr(0, 12));
    }
}

TEST(SheetPagesTest, a_sheet_in_spanish_stays_within_the_margins) {
    expect_clean_margins(example_sheet(), "Spanish words of every kind", spanish_reader());
}

// The words of cautions and severities stand in one line, what they are about beside them.
TEST(SheetPagesTest, the_text_beside_a_mark_begins_behind_its_word_in_every_language) {
    for (const auto& language : languages()) {
        const Formatter reader{UnitSystem::si, QLocale::c(), texts_in(language.code)};
        for (const auto word :
             {SignalWord::danger, SignalWord::warning, SignalWord::caution, SignalWord::notice}) {
            const QString text = reader.text(label_of(word));
            SheetCautions cautions;
            cautions.lines = {{word, "Water."}};
            const auto rows = rows_of(cautions, Measure{reader, 500.0 * pt});
            const auto& cells = rows.front().cells;
            EXPECT_GT(cells[1].x, cells[0].x + width_of(text, Face::strong) + 13.0 * pt)
                << text.toStdString();
        }
        for (const auto severity : {Severity::note, Severity::waste, Severity::fault, Severity::harm}) {
            const QString text = reader.text(label_of(severity));
            SheetFindings findings;
            findings.findings = {{severity, "Bank", "It drips.", {}, ""}};
            const auto rows = rows_of(findings, Measure{reader, 500.0 * pt});
            const auto& cells = rows.front().cells;
            EXPECT_GT(cells[1].x, cells[0].x + width_of(text, Face::strong) + 13.0 * pt)
                << text.toStdString();
        }
    }
}

TEST(SheetPagesTest, a_sheet_without_blocks_is_one_page) {
    EXPECT_EQ(SheetPages(sheet_of({}), size_of(Paper::letter), si).count(), 1);
}

TEST(SheetPagesTest, more_findings_never_take_fewer_pages) {
    int before = 0;
    for (std::size_t count = 0; count <= 60; count += 5) {
        const int pages =
            SheetPages(with_findings(count, "The far end stays dry."), size_of(Paper::letter), si).count();
        EXPECT_GE(pages, before) << count;
        before = pages;
    }
    EXPECT_GT(before, 2);
}

TEST(SheetPagesTest, a_draft_says_so_across_every_page_behind_a_text_that_stays_legible) {
    auto content = with_findings(30, "The far end stays dry.");
    const auto draft = preview_pages(content, Paper::letter, si, dpi);
    content.draft = false;
    const auto final = preview_pages(content, Paper::letter, si, dpi);
    ASSERT_GT(draft.size(), 1U);
    ASSERT_EQ(draft.size(), final.size());
    for (std::size_t i = 0; i < draft.size(); ++i) {
        // The middle of the page, clear of the footer, which names the draft too.
        const QRect middle{0, draft[i].height() / 5, draft[i].width(), draft[i].height() * 3 / 5};
        const QImage with = draft[i].copy(middle);
        const QImage without = final[i].copy(middle);
        EXPECT_GT(different_pixels(with, without), with.width() * with.height() / 50) << "page " << i + 1;
        // Where the paper was white it is at least as light as a newspaper's; no letter got lighter.
        for (int y = 0; y < with.height(); ++y) {
            for (int x = 0; x < with.width(); ++x) {
                if (!is_ink(without.pixel(x, y))) {
                    ASSERT_GE(qGray(with.pixel(x, y)), 210) << x << ", " << y;
                } else {
                    ASSERT_LE(qGray(with.pixel(x, y)), qGray(without.pixel(x, y)) + 1) << x << ", " << y;
                }
            }
        }
    }
}

/// Places of a tenth of an inch whose grey differs by more than a third: two rasterisers differ at every
/// edge, but not so far once blurred to that.
int places_apart(const QImage& a, const QImage& b) {
    const QSize coarse{85, 110};
    const auto blurred = [&](const QImage& image) {
        return image.convertToFormat(QImage::Format_RGB32)
            .scaled(coarse, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    };
    const QImage one = blurred(a);
    const QImage other = blurred(b);
    int apart = 0;
    for (int y = 0; y < coarse.height(); ++y) {
        for (int x = 0; x < coarse.width(); ++x) {
            apart += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > 85 ? 1 : 0;
        }
    }
    return apart;
}

// Screen, printer and file share one layout: the file's pages, made visible by another program, are the
// preview's.
TEST(SheetPagesTest, the_file_shows_what_the_preview_shows) {
    QTemporaryDir folder;
    const QString path = folder.filePath("sheet.pdf");
    ASSERT_TRUE(write_pdf(example_sheet(), path.toStdString(), Paper::letter, si).has_value());
    output_of("pdftoppm", {"-r", "60", "-png", path, folder.filePath("page")});
    const auto preview = preview_pages(example_sheet(), Paper::letter, si, dpi);
    const QStringList files = QDir{folder.path()}.entryList({"page*.png"}, QDir::Files, QDir::Name);
    ASSERT_EQ(static_cast<std::size_t>(files.size()), preview.size());
    for (std::size_t i = 0; i < preview.size(); ++i) {
        const QImage page{folder.filePath(files[static_cast<qsizetype>(i)])};
        EXPECT_LT(places_apart(page, preview[i]), 5) << "page " << i + 1;
    }
    // The measure can tell pages apart.
    EXPECT_GT(places_apart(preview.front(), preview_pages(sheet_of({}), Paper::letter, si, dpi).front()), 50);
}

}  // namespace
}  // namespace wetfront::ui
