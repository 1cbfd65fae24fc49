// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The demo's example visit, not signed, at the step House and banks; its first timer is trimmed.
class TemplateWalkTest : public testing::TestWithParam<QSize> {
protected:
    TemplateWalkTest() {
        VisitFile file = example_visit();
        file.visit.signatures.clear();
        const auto added = walk.store().add(file);
        EXPECT_TRUE(added) << added.error().text();
        house_ = file.house.id;
        walk.session().openVisit(QString::fromStdString(file.visit.id.text));
        walk.go_to(Step::house_and_banks);
    }

    void click(const char* name) { walk.hand().click(QString::fromUtf8(name)); }
    [[nodiscard]] bool shows(const char* name) { return walk.hand().shows(QString::fromUtf8(name)); }
    bool says(const char* words) {
        return std::ranges::any_of(walk.hand().everything(), [&](const Heard& each) {
            return each.name.contains(QLatin1String(words));
        });
    }
    void open_templates() {
        click("Language, units and light");
        click("Setting templates");
        ASSERT_EQ(walk.session().place(), QStringLiteral("templates"));
    }
    void back() {
        click("Back");
        // As the event loop does before a person can press again: the page that was left is gone.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void rewrite(const char* field, const char* text) {
        walk.hand().click(QString::fromUtf8(field));
        walk.hand().key(Qt::Key_A, Qt::ControlModifier);
        walk.hand().type(QString::fromUtf8(text));
        walk.hand().key(Qt::Key_Return);
    }
    [[nodiscard]] std::vector<SettingTemplate> kept() { return walk.store().setting_templates().value(); }

    Walk walk{GetParam()};
    Id house_;
};

TEST_P(TemplateWalkTest, a_controller_is_described_handed_over_as_a_file_and_chosen_at_a_timer) {
    open_templates();
    EXPECT_TRUE(says("None of your own yet"));
    click("Make one from Plain trimmed timer");
    rewrite("Name", "Grey box");
    click("On the controller: Base on-time");
    rewrite("Label", "Wet for");
    click("Smallest step");
    click("0");
    click("Done");
    EXPECT_TRUE(says("must be more than 0")) << "a step of 0 was not refused";
    EXPECT_TRUE(shows("entry")) << "the pad went away with what was typed";
    click("Erase");
    click("1");
    click("5");
    click("Done");
    EXPECT_FALSE(shows("entry"));
    ASSERT_EQ(kept().size(), 1U);
    const auto described = kept().front();
    EXPECT_EQ(described.name, "Grey box");
    EXPECT_EQ(described.setting(TemplateKey::base_on_time)->label, "Wet for");
    EXPECT_EQ(described.setting(TemplateKey::base_on_time)->resolution, 15.0);

    click("Write to documents");
    EXPECT_TRUE(says("Written to "));
    back();
    click("Add one from a file");
    walk.hand().click(walk.documents() + QStringLiteral("/Grey-box-template.json"));
    EXPECT_TRUE(says("Wet for (Base on-time)")) << "what is in the file is not shown";
    EXPECT_TRUE(says("here already"));
    EXPECT_EQ(kept().size(), 1U) << "it was added before anybody said yes";
    click("Add this template");
    ASSERT_EQ(kept().size(), 2U);
    back();
    ASSERT_EQ(walk.session().place(), QStringLiteral("visit"));

    click("Grey box");
    const auto chosen = walk.store().house(house_).value().timers.front().template_id;
    EXPECT_TRUE(std::ranges::any_of(kept(), [&](const auto& each) { return each.id == chosen; }));
}

TEST_P(TemplateWalkTest, a_setting_found_is_typed_under_the_firms_label_and_advised_in_its_unit) {
    const std::string visit_id = walk.stored_visit().visit.id.text;
    auto described = generic_template(TimerKind::trimmed);
    described.id = walk.store().new_id();
    described.name = "Grey box";
    for (auto& setting : described.settings) {
        if (setting.setting == TemplateKey::base_on_time) {
            setting.label = "Wet for";
            setting.unit = "min";
            setting.resolution = 0.25;
            setting.most = 30.0;
        }
    }
    ASSERT_TRUE(walk.store().save(described));
    walk.session().leaveAnyway(false);
    walk.session().openVisit(QString::fromStdString(visit_id));
    walk.go_to(Step::house_and_banks);
    click("Grey box");
    walk.go_to(Step::settings_found);
    EXPECT_TRUE(shows("Wet for"));
    EXPECT_FALSE(shows("Base on-time"));
    click("Wet for");
    EXPECT_TRUE(says("0 min to 30 min")) << "the pad does not show the controller's range";
    click("Cancel");
    walk.enter(QStringLiteral("Wet for"), QStringLiteral("1.5"), QString{});
    const auto visit = walk.stored_visit();
    const auto& found = *visit.visit.found_of(visit.house.timers.front().id);
    EXPECT_EQ(found.base_on_time->text(), "1.5 min");
    walk.go_to(Step::advice);
    const auto line = walk.hand().find(QStringLiteral("Wet for"));
    const auto& fit = *advise(visit).timers.front().fit;
    EXPECT_TRUE(line.description.contains(
        QStringLiteral("found 1.5 min, advised %1 min")
            .arg(QString::fromStdString(fit.line(TemplateKey::base_on_time)->number))))
        << line.description.toStdString();
}

TEST_P(TemplateWalkTest, a_template_that_lacks_something_says_so_at_the_line_and_in_the_list) {
    open_templates();
    click("Make one from Plain timer with a fixed interval");
    click("Period");
    EXPECT_TRUE(says("needs Period"));
    click("Pad hours from");
    click("On the controller: Pad hours from");
    walk.enter(QStringLiteral("Least"), QStringLiteral("0600"), QString{});
    EXPECT_EQ(kept().front().setting(TemplateKey::pad_hours_from)->least, 360.0) << "6 h in minutes";
    EXPECT_TRUE(says("Pad hours to is missing"));
    click("Pad hours from");
    back();
    EXPECT_TRUE(says("Cannot be used yet"));
    click("Open Copy of Plain timer with a fixed interval");
    click("Period");
    EXPECT_FALSE(says("needs Period"));
    back();
    EXPECT_FALSE(says("Cannot be used yet"));
}

TEST_P(TemplateWalkTest, the_keyboard_goes_along_with_a_setting_that_moves_up) {
    open_templates();
    click("Make one from Plain timer with a fixed interval");
    walk.hand().find(QStringLiteral("Move Base on-time up")).item->forceActiveFocus(Qt::TabFocusReason);
    walk.hand().key(Qt::Key_Space);
    EXPECT_EQ(kept().front().settings.front().setting, TemplateKey::base_on_time);
    EXPECT_EQ(walk.hand().focused(), QStringLiteral("Move Base on-time down"));
}

INSTANTIATE_TEST_SUITE_P(Screens, TemplateWalkTest, testing::Values(QSize(1024, 600), QSize(800, 1280)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
