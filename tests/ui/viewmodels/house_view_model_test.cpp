// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/house_view_model.h"

#include <QPointF>

#include "desk.h"

namespace wetfront::ui {
namespace {

/// Of House Alder, whose headers are described, with no flow measured yet.
class HouseViewModelTest : public Desk {
protected:
    [[nodiscard]] PartsModel& banks() { return *house_.banks(); }
    [[nodiscard]] QVariantMap picture() {
        return banks().data(banks().index(0), PartsModel::PictureRole).toMap();
    }
    [[nodiscard]] QString words() {
        return banks().data(banks().index(0), PartsModel::ResultsRole).toStringList().join(u'\n');
    }
    static FormModel* form(PartsModel& parts, int row, PartsModel::Role role) {
        return parts.data(parts.index(row), role).value<FormModel*>();
    }
    static int row(const FormModel* form, const char* key) {
        for (int i = 0; i < form->count(); ++i) {
            if (form->data(form->index(i), FormModel::KeyRole).toString() == QLatin1String(key)) {
                return i;
            }
        }
        ADD_FAILURE() << "no line has the key " << key;
        return -1;
    }
    void measure_flow(const char* text) {
        auto& flow = record_.visit().conditions.flows.emplace_back();
        flow.pump = file_.house.pumps.front().id;
        flow.flow = Entered<VolumeFlow>::parse(text, "flow").value();
        ASSERT_TRUE(record_.save_visit());
    }

    VisitRecord record_{context_, file_, nullptr};
    HouseViewModel house_{record_, nullptr};
};

TEST_F(HouseViewModelTest, the_headers_picture_waits_for_a_flow_and_says_so) {
    EXPECT_TRUE(picture().isEmpty());
    EXPECT_TRUE(words().contains(QStringLiteral("a flow is missing"))) << words().toStdString();
}

// By hand: 10 ft at 3 in are 40 outlets, the last one at the far end.
TEST_F(HouseViewModelTest, the_headers_picture_shows_every_outlet_against_their_mean) {
    measure_flow("20gpm");
    auto* bank = form(banks(), 0, PartsModel::FormRole);
    EXPECT_EQ(bank->enter(row(bank, "length"), QStringLiteral("10ft")), QString{});
    EXPECT_EQ(bank->enter(row(bank, "outlet_spacing"), QStringLiteral("3in")), QString{});
    const auto outlets = picture().value("outlets").toList();
    ASSERT_EQ(outlets.size(), 40);
    EXPECT_EQ(picture().value("other").toList().size(), outlets.size());
    double sum = 0.0;
    double before = 0.0;
    for (const auto& outlet : outlets) {
        const auto point = outlet.toPointF();
        EXPECT_GT(point.x(), before);
        EXPECT_LE(point.x(), 1.0 + 1e-12);
        before = point.x();
        sum += point.y();
    }
    EXPECT_NEAR(sum / static_cast<double>(outlets.size()), 1.0, 1e-9);
    EXPECT_EQ(picture().value("pumpOnLeft").toBool(), file_.house.banks.front().pump_end == PumpEnd::left);
    EXPECT_TRUE(words().contains(QStringLiteral("as measured"))) << words().toStdString();
    EXPECT_TRUE(words().contains(QStringLiteral("Assumed"))) << words().toStdString();
}

TEST_F(HouseViewModelTest, what_is_not_described_of_a_header_is_named) {
    measure_flow("60gpm");
    auto* bank = form(banks(), 0, PartsModel::FormRole);
    EXPECT_EQ(bank->enter(row(bank, "outlet_bore"), QString{}), QString{});
    EXPECT_EQ(bank->enter(row(bank, "outlet_spacing"), QString{}), QString{});
    EXPECT_TRUE(picture().isEmpty());
    EXPECT_TRUE(words().contains(QStringLiteral("outlet bore, outlet spacing."))) << words().toStdString();
}

TEST_F(HouseViewModelTest, a_point_of_the_pump_curve_is_added_by_filling_it_in) {
    auto* more = form(*house_.pumps(), 0, PartsModel::MoreRole);
    const auto saved = [this] { return store_.house(file_.house.id).value().pumps.front().curve; };
    const auto lines = more->count();
    const auto points = saved().size();
    const int last = lines - 2;
    ASSERT_EQ(more->data(more->index(last), FormModel::KeyRole), QStringLiteral("flow"));
    EXPECT_EQ(more->enter(last, QStringLiteral("90gpm")), QString{});
    EXPECT_EQ(more->enter(last + 1, QStringLiteral("20ft")), QString{});
    ASSERT_EQ(saved().size(), points + 1);
    EXPECT_EQ(saved().back().flow->text(), "90gpm");
    EXPECT_EQ(saved().back().head->text(), "20ft");
    EXPECT_EQ(more->count(), lines + 2);
    EXPECT_EQ(more->enter(last, QString{}), QString{});
    EXPECT_EQ(more->enter(last + 1, QString{}), QString{});
    EXPECT_EQ(saved().size(), points);
    EXPECT_EQ(more->count(), lines);
}

TEST_F(HouseViewModelTest, a_pump_or_bank_that_something_was_measured_at_stays) {
    auto& at = record_.visit().conditions.at_banks.emplace_back();
    at.bank = file_.house.banks.front().id;
    at.behind_pad = Entered<Temperature>::parse("80degF", "behind pad").value();
    ASSERT_TRUE(record_.save_visit());
    const int before = banks().count();
    EXPECT_TRUE(banks().remove(0).contains(QStringLiteral("was measured")));
    EXPECT_EQ(banks().count(), before);
    EXPECT_EQ(banks().remove(1), QString{});
    EXPECT_EQ(banks().count(), before - 1);
}

TEST_F(HouseViewModelTest, a_new_pump_can_feed_a_bank_at_once) {
    auto* bank = form(banks(), 0, PartsModel::FormRole);
    const int fed_by = row(bank, "pump");
    const auto choices = [&] {
        return bank->data(bank->index(fed_by), FormModel::ChoicesRole).toList().size();
    };
    const auto before = choices();
    EXPECT_EQ(house_.pumps()->add(), QString{});
    EXPECT_EQ(choices(), before + 1);
}

}  // namespace
}  // namespace wetfront::ui
