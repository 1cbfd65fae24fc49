// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/signature_view_model.h"

#include <QSignalSpy>
#include <functional>

#include "desk.h"
#include "support/full_disk.h"

namespace wetfront::ui {
namespace {

const QString long_line = QStringLiteral("500,400 900,700 1400,300");
const QString another_line = QStringLiteral("300,300 2000,350");

/// A visit with a technician and a grower, whose sheet is not painted but kept as a few bytes.
class SignatureViewModelTest : public Desk {
protected:
    SignatureViewModelTest() {
        paper_.pages = [](const SheetContent&, const Formatter&, Paper) { return std::vector<QImage>{}; };
        paper_.pdf = [this](const SheetContent& content, const Formatter&, Paper) -> Result<QByteArray> {
            if (!paper_works_) {
                return storage_error("sheet", "the painter failed", "try again");
            }
            kept_ = content;
            return QByteArray{"%PDF-"};
        };
        EXPECT_EQ(sheet().addPerson(QStringLiteral("Jo Penn"), QStringLiteral("technician")), QString{});
        EXPECT_EQ(sheet().addPerson(QStringLiteral("Pat Quill"), QStringLiteral("grower")), QString{});
    }
    SheetViewModel& sheet() { return *visit_.sheet(); }
    SignatureViewModel& signatures() { return *sheet().signatures(); }
    [[nodiscard]] QVariantMap signer(int row) { return signatures().signers().at(row).toMap(); }
    [[nodiscard]] bool has_drawn(int row) { return signer(row)["drawn"].toBool(); }
    void draw(int row, const QString& line = long_line) {
        signatures().draw(row);
        signatures().addStroke(line);
        signatures().take();
    }

    bool paper_works_ = true;
    std::optional<SheetContent> kept_;
    SheetPaper paper_;
    VisitViewModel visit_{context_, presses_, paper_, file_, {}, nullptr};
};

TEST_F(SignatureViewModelTest, what_is_drawn_goes_into_the_signed_visit_with_name_role_and_time) {
    draw(1, another_line);
    const auto grower_drew = clock_.wall_now();
    clock_.advance_ms(60'000);
    draw(0);
    clock_.advance_ms(60'000);
    EXPECT_TRUE(stored().signatures.empty()) << "drawn is not signed";
    ASSERT_EQ(sheet().sign(0), QString{});
    const std::vector<Signature> wanted{
        {{"Pat Quill", "grower"}, grower_drew, {Stroke{{{300, 300}, {2000, 350}}}}},
        {{"Jo Penn", "technician"}, clock_.wall_now(), {Stroke{{{500, 400}, {900, 700}, {1400, 300}}}}}};
    EXPECT_EQ(stored().signatures, wanted);
    ASSERT_TRUE(kept_);
    EXPECT_FALSE(kept_->draft);
    EXPECT_EQ(signatures().signers().size(), 2);
    EXPECT_TRUE(has_drawn(0));
    EXPECT_EQ(signer(0)["line"], "Pat Quill, grower");
    EXPECT_EQ(signatures().notice(), QString{}) << "signing is no change behind the signers' backs";
}

TEST_F(SignatureViewModelTest, signing_without_drawing_stays_possible) {
    ASSERT_EQ(sheet().sign(0), QString{});
    const std::vector<Signature> wanted{{{"Jo Penn", "technician"}, clock_.wall_now(), {}}};
    EXPECT_EQ(stored().signatures, wanted);
    EXPECT_FALSE(has_drawn(0));
}

TEST_F(SignatureViewModelTest, of_two_persons_of_one_name_the_one_who_is_chosen_signs) {
    EXPECT_EQ(sheet().addPerson(QStringLiteral("Jo Penn"), QStringLiteral("grower's son")), QString{});
    ASSERT_EQ(sheet().sign(2), QString{});
    EXPECT_EQ(stored().signatures.front().person.role, "grower's son");
    EXPECT_NE(sheet().sign(3), QString{});
    EXPECT_NE(sheet().sign(-1), QString{});
}

TEST_F(SignatureViewModelTest, who_has_drawn_none_is_said) {
    EXPECT_TRUE(signatures().leftOut().contains(QStringLiteral("Jo Penn, technician; Pat Quill, grower")));
    draw(0);
    EXPECT_FALSE(signatures().leftOut().contains(QStringLiteral("Jo Penn")));
    EXPECT_TRUE(signatures().leftOut().contains(QStringLiteral("Pat Quill, grower")));
    draw(1);
    EXPECT_EQ(signatures().leftOut(), QString{});
    sheet().removePerson(1);
    EXPECT_TRUE(signatures().leftOut().contains(QStringLiteral("for the grower")));
}

// least_signature_length is 300.
TEST_F(SignatureViewModelTest, an_empty_field_a_dot_and_a_touch_are_no_signature) {
    for (const char* line : {"", "800,500", "800,500 1099,500"}) {
        signatures().draw(0);
        if (*line != '\0') {
            signatures().addStroke(QString::fromLatin1(line));
        }
        signatures().take();
        EXPECT_TRUE(signatures().open()) << line;
        EXPECT_FALSE(signatures().problem().isEmpty()) << line;
        signatures().cancel();
        EXPECT_FALSE(has_drawn(0)) << line;
    }
    draw(0, QStringLiteral("800,500 1100,500"));
    EXPECT_TRUE(has_drawn(0));
}

TEST_F(SignatureViewModelTest, cancelling_keeps_what_was_there) {
    draw(0);
    signatures().draw(0);
    EXPECT_EQ(signatures().strokes(), QStringList{long_line}) << "what he drew stands there";
    signatures().clear();
    signatures().addStroke(another_line);
    signatures().cancel();
    EXPECT_FALSE(signatures().open());
    EXPECT_EQ(signer(0)["strokes"].toStringList(), QStringList{long_line});
    signatures().draw(0);
    signatures().clear();
    signatures().addStroke(another_line);
    signatures().take();
    EXPECT_EQ(signer(0)["strokes"].toStringList(), QStringList{another_line});
    signatures().takeOff(0);
    EXPECT_FALSE(has_drawn(0));
}

TEST_F(SignatureViewModelTest, the_field_says_whose_it_is_and_how_much_is_drawn) {
    signatures().draw(1);
    EXPECT_EQ(signatures().name(), "Pat Quill");
    EXPECT_EQ(signatures().role(), "grower");
    EXPECT_EQ(signatures().state(), "Nothing is drawn yet.");
    signatures().addStroke(long_line);
    signatures().addStroke(another_line);
    EXPECT_EQ(signatures().state(), "Lines drawn: 2.");
}

TEST_F(SignatureViewModelTest, a_full_field_takes_no_more_and_says_so) {
    signatures().draw(0);
    for (std::size_t i = 0; i < most_strokes; ++i) {
        signatures().addStroke(long_line);
        EXPECT_EQ(signatures().problem(), QString{}) << i;
    }
    signatures().addStroke(another_line);
    EXPECT_FALSE(signatures().problem().isEmpty());
    EXPECT_EQ(signatures().strokes().size(), static_cast<qsizetype>(most_strokes));

    signatures().clear();
    Stroke many;
    many.points.assign(most_drawn_points - 2, {1, 2});
    signatures().addStroke(QString::fromStdString(many.text()));
    signatures().addStroke(long_line);
    EXPECT_FALSE(signatures().problem().isEmpty()) << "three points where two are left";
    signatures().addStroke(another_line);
    EXPECT_EQ(signatures().problem(), QString{});
    signatures().take();
    EXPECT_EQ(sheet().sign(0), QString{}) << "as much as a record holds";
}

TEST_F(SignatureViewModelTest, any_change_of_the_sheet_takes_drawn_signatures_off_and_that_is_said) {
    const std::vector<std::pair<const char*, std::function<void()>>> changes{
        {"an open point", [&] { sheet().addOpenPoint(QStringLiteral("Strainer")); }},
        {"undone", [&] { visit_.entryUndo()->undo(); }},
        {"a tick", [&] { visit_.leavingChecks()->tick(0, true); }},
        {"a press", [&] { visit_.stopwatch()->mark(); }},
        {"a person", [&] { sheet().addPerson(QStringLiteral("Kim Rill"), QString{}); }},
        {"the house", [&] { visit_.house()->house()->enter(0, QStringLiteral("House Seven")); }},
        {"the farm", [&] { visit_.house()->farm()->enter(0, QStringLiteral("Sedge Farm")); }},
        {"the reader's language", [&] { sheet().setLanguage(QStringLiteral("es")); }},
        {"the reader's units", [&] { sheet().setUnits(QStringLiteral("si")); }}};
    for (const auto& [what, change] : changes) {
        draw(0);
        draw(1);
        EXPECT_EQ(signatures().notice(), QString{}) << what;
        change();
        EXPECT_FALSE(has_drawn(0) || has_drawn(1)) << what;
        EXPECT_FALSE(signatures().notice().isEmpty()) << what;
    }
    ASSERT_EQ(sheet().sign(0), QString{});
    EXPECT_TRUE(stored().signatures.front().drawn.empty());
}

TEST_F(SignatureViewModelTest, a_change_closes_a_field_that_is_being_drawn_on) {
    signatures().draw(0);
    signatures().addStroke(long_line);
    sheet().addOpenPoint(QStringLiteral("Strainer"));
    EXPECT_FALSE(signatures().open());
    EXPECT_FALSE(signatures().notice().isEmpty());
}

TEST_F(SignatureViewModelTest, where_nothing_was_drawn_a_change_says_nothing) {
    sheet().addOpenPoint(QStringLiteral("Strainer"));
    EXPECT_EQ(signatures().notice(), QString{});
}

TEST_F(SignatureViewModelTest, a_visit_that_could_not_be_signed_keeps_what_was_drawn) {
    draw(0);
    paper_works_ = false;
    EXPECT_NE(sheet().sign(0), QString{});
    EXPECT_TRUE(has_drawn(0));
    EXPECT_TRUE(visit_.file().visit.signatures.empty());
    paper_works_ = true;
    {
        const test::FullDisk full{0};
        EXPECT_NE(sheet().sign(0), QString{});
    }
    EXPECT_TRUE(has_drawn(0));
    EXPECT_EQ(sheet().sign(0), QString{});
    EXPECT_EQ(stored().signatures.front().drawn.size(), 1U);
}

TEST_F(SignatureViewModelTest, a_correction_needs_signatures_of_its_own) {
    draw(0);
    ASSERT_EQ(sheet().sign(0), QString{});
    VisitFile correction = file_;
    correction.visit = stored();
    correction.visit.id = Id{"correction"};
    correction.visit.replaces = file_.visit.id;
    correction.visit.signatures.clear();
    ASSERT_TRUE(store_.add(correction));
    VisitViewModel corrected{context_, presses_, paper_, correction, {}, nullptr};
    for (const auto& each : corrected.sheet()->signatures()->signers()) {
        EXPECT_FALSE(each.toMap()["drawn"].toBool());
    }
    ASSERT_EQ(corrected.sheet()->sign(0), QString{});
    EXPECT_TRUE(store_.visit(Id{"correction"}).value().signatures.front().drawn.empty());
}

TEST_F(SignatureViewModelTest, nobody_draws_on_a_signed_sheet) {
    ASSERT_EQ(sheet().sign(0), QString{});
    signatures().draw(1);
    EXPECT_FALSE(signatures().open());
}

}  // namespace
}  // namespace wetfront::ui
