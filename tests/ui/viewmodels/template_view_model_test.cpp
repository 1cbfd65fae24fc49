// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/template_view_model.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>

#include "desk.h"
#include "records/record_text.h"
#include "viewmodels/templates_view_model.h"

namespace wetfront::ui {
namespace {

/// A template of the firm that starts as the plain trimmed one does, on a store of its own.
class TemplateViewModelTest : public Desk {
protected:
    TemplateViewModelTest() : templates_{context_, folders(), nullptr} {
        auto made = templates_.make_from(generic_template(TimerKind::trimmed).id);
        EXPECT_TRUE(made) << made.error().text();
        id_ = made.value().id;
        page_ = std::make_unique<TemplateViewModel>(context_, made.value(), folders(), nullptr);
    }

    [[nodiscard]] std::function<QStringList()> folders() const {
        return [this] { return QStringList{documents()}; };
    }
    [[nodiscard]] QString documents() const { return folder_.filePath(QStringLiteral("documents")); }
    [[nodiscard]] SettingTemplate kept() { return store_.setting_template(id_).value(); }
    [[nodiscard]] QVariant shown(const char* key, const char* what) const {
        return page_->settings()[QLatin1String(key)].toMap()[QLatin1String(what)];
    }
    QString enter(const char* key, const char* field, const char* text) {
        return page_->enterSetting(QLatin1String(key), QLatin1String(field), QString::fromUtf8(text));
    }
    QString in_file(const QByteArray& text) {
        QDir{}.mkpath(documents());
        QFile file{documents() + QStringLiteral("/handed-over.json")};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }

    TemplatesViewModel templates_;
    Id id_;
    std::unique_ptr<TemplateViewModel> page_;
};

TEST_F(TemplateViewModelTest, what_is_entered_is_stored_at_once) {
    EXPECT_EQ(page_->enter(QStringLiteral("name"), QStringLiteral("Barn box, grey")), QString{});
    EXPECT_EQ(page_->enter(QStringLiteral("note"), QStringLiteral("in houses 1 to 4")), QString{});
    EXPECT_EQ(page_->enter(QStringLiteral("counts_from"), QStringLiteral("full header")), QString{});
    EXPECT_EQ(enter("base_on_time", "label", "Wet for"), QString{});
    EXPECT_EQ(enter("base_on_time", "resolution", "10 s"), QString{});
    EXPECT_EQ(enter("pad_hours_from", "least", "06:30"), QString{});
    const auto described = kept();
    EXPECT_EQ(described.name, "Barn box, grey");
    EXPECT_EQ(described.note, "in houses 1 to 4");
    EXPECT_EQ(described.counts_from, CountsFrom::full_header);
    EXPECT_EQ(described.setting(TemplateKey::base_on_time)->label, "Wet for");
    EXPECT_EQ(described.setting(TemplateKey::base_on_time)->resolution, 10.0);
    EXPECT_EQ(described.setting(TemplateKey::pad_hours_from)->least, 390.0) << "6 h and a half in minutes";
    EXPECT_EQ(page_->problem(), QString{});
}

TEST_F(TemplateViewModelTest, what_is_wrong_by_itself_is_refused_and_says_why) {
    const auto before = kept();
    EXPECT_TRUE(enter("base_on_time", "resolution", "0").contains(QStringLiteral("must be more than 0")))
        << enter("base_on_time", "resolution", "0").toStdString();
    const auto long_label = std::string(200, 'a');
    for (const auto& [field, text] : {std::pair{"label", ""},
                                      {"label", "   "},
                                      {"label", long_label.c_str()},
                                      {"unit", "degF"},
                                      {"resolution", "5000"},
                                      {"least", "4000"},
                                      {"most", "soon"}}) {
        EXPECT_NE(enter("base_on_time", field, text), QString{}) << field << " took '" << text << "'";
    }
    EXPECT_NE(enter("pad_hours_to", "most", "25:00"), QString{});
    EXPECT_NE(page_->enter(QStringLiteral("name"), QStringLiteral("  ")), QString{});
    EXPECT_EQ(kept(), before);
}

TEST_F(TemplateViewModelTest, what_does_not_fit_together_yet_is_kept_and_stands_at_its_line) {
    // 1 to 60 min become hours: more than a day can hold, until the largest is put right.
    EXPECT_EQ(enter("period", "unit", "h"), QString{});
    EXPECT_EQ(shown("period", "problemField"), QStringLiteral("most"));
    EXPECT_TRUE(page_->problem().startsWith(QStringLiteral("Period")));
    EXPECT_EQ(kept().setting(TemplateKey::period)->unit, "h");
    EXPECT_EQ(enter("period", "most", "2"), QString{});
    EXPECT_EQ(shown("period", "problem").toString(), QString{});
    EXPECT_EQ(page_->problem(), QString{});
}

TEST_F(TemplateViewModelTest, every_problem_stands_at_its_own_line) {
    EXPECT_EQ(enter("period", "unit", "h"), QString{});
    EXPECT_EQ(page_->use(QStringLiteral("on_time_ceiling"), false), QString{});
    EXPECT_EQ(page_->use(QStringLiteral("rinse_at"), false), QString{});
    EXPECT_EQ(page_->use(QStringLiteral("pad_hours_to"), false), QString{});
    EXPECT_EQ(page_->enter(QStringLiteral("trim_rows"), QString{}), QString{});
    EXPECT_NE(shown("period", "problem").toString(), QString{});
    EXPECT_TRUE(shown("on_time_ceiling", "problem").toString().contains(QStringLiteral("On-time ceiling")))
        << shown("on_time_ceiling", "problem").toString().toStdString();
    EXPECT_NE(shown("pad_hours_to", "problem").toString(), QString{});
    EXPECT_EQ(shown("rinse_at", "problem").toString(), QString{}) << "a rinse time may be missing";
    EXPECT_NE(page_->trimRowsProblem(), QString{});
}

TEST_F(TemplateViewModelTest, a_setting_that_the_kind_of_timer_cannot_have_says_so_and_is_not_lost) {
    EXPECT_EQ(page_->enter(QStringLiteral("kind"), QStringLiteral("fixed interval")), QString{});
    EXPECT_NE(shown("on_time_ceiling", "problem").toString(), QString{});
    EXPECT_EQ(page_->use(QStringLiteral("on_time_ceiling"), false), QString{});
    EXPECT_FALSE(shown("on_time_ceiling", "shown").toBool());
    EXPECT_EQ(page_->enter(QStringLiteral("kind"), QStringLiteral("trimmed")), QString{});
    EXPECT_TRUE(shown("on_time_ceiling", "shown").toBool());
}

TEST_F(TemplateViewModelTest, a_setting_that_comes_back_is_as_it_was) {
    EXPECT_EQ(enter("humidity_cut_off", "label", "Too damp above"), QString{});
    EXPECT_EQ(page_->use(QStringLiteral("humidity_cut_off"), false), QString{});
    EXPECT_EQ(kept().setting(TemplateKey::humidity_cut_off), nullptr);
    EXPECT_EQ(page_->use(QStringLiteral("humidity_cut_off"), true), QString{});
    ASSERT_NE(kept().setting(TemplateKey::humidity_cut_off), nullptr);
    EXPECT_EQ(kept().setting(TemplateKey::humidity_cut_off)->label, "Too damp above");
}

TEST_F(TemplateViewModelTest, settings_move_up_and_down_in_the_order_in_which_the_controller_asks) {
    const auto before = page_->order();
    EXPECT_EQ(page_->move(2, -1), QString{});
    EXPECT_EQ(page_->order()[1], before[2]);
    EXPECT_EQ(page_->order()[2], before[1]);
    EXPECT_EQ(kept().settings[1].label, before[2].toStdString());
    EXPECT_EQ(page_->move(0, -1), QString{});
    EXPECT_EQ(page_->order()[0], before[0]) << "above the first there is nothing";
}

TEST_F(TemplateViewModelTest, a_demand_between_settings_is_ticked_and_says_where_it_cannot_be_met) {
    const auto demand = QStringLiteral("ceiling below period");
    EXPECT_EQ(page_->demand(demand, true), QString{});
    EXPECT_TRUE(kept().demands(SettingDependency::ceiling_below_period));
    // A ceiling of an hour and more is never below a period of an hour at most.
    EXPECT_EQ(enter("on_time_ceiling", "most", "7200"), QString{});
    EXPECT_EQ(enter("on_time_ceiling", "least", "3600"), QString{});
    EXPECT_NE(page_->demanded()[demand].toMap()["problem"].toString(), QString{});
    EXPECT_EQ(page_->demand(demand, false), QString{});
    EXPECT_FALSE(kept().demands(SettingDependency::ceiling_below_period));
}

TEST_F(TemplateViewModelTest, trim_rows_that_cannot_ascend_are_said_at_the_demand) {
    const auto demand = QStringLiteral("trim rows ascend");
    EXPECT_EQ(page_->demanded()[demand].toMap()["problem"].toString(), QString{});
    // 0, 10 and 20 degF are three steps for four rows.
    EXPECT_EQ(enter("trim_above_target", "resolution", "10"), QString{});
    EXPECT_NE(page_->demanded()[demand].toMap()["problem"].toString(), QString{});
    EXPECT_EQ(page_->enter(QStringLiteral("trim_rows"), QStringLiteral("3")), QString{});
    EXPECT_EQ(page_->demanded()[demand].toMap()["problem"].toString(), QString{});
}

TEST_F(TemplateViewModelTest, problems_are_there_exactly_where_the_check_refuses) {
    const auto agree = [&](const char* after) {
        EXPECT_EQ(static_cast<bool>(check_template(kept(), "")), page_->problem().isEmpty())
            << after << ": " << page_->problem().toStdString();
    };
    agree("a copy of the plain one");
    for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
        const auto text = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
        const bool was = shown(text.toLatin1().constData(), "used").toBool();
        EXPECT_EQ(page_->use(text, !was), QString{});
        agree(text.toLatin1().constData());
        EXPECT_EQ(page_->use(text, was), QString{});
    }
    for (const char* kind : {"fixed interval", "on demand", "trimmed"}) {
        EXPECT_EQ(page_->enter(QStringLiteral("kind"), QLatin1String(kind)), QString{});
        agree(kind);
    }
}

TEST_F(TemplateViewModelTest, a_file_of_a_removed_template_says_that_it_can_be_brought_back) {
    page_->writeTo(documents());
    ASSERT_TRUE(store_.set_removed(RecordKind::setting_template, id_, true));
    ASSERT_TRUE(templates_.reload());
    templates_.lookForFiles();
    EXPECT_EQ(templates_.lookAt(templates_.files().front()), QString{});
    EXPECT_TRUE(templates_.offered()["known"].toString().contains(QStringLiteral("can be brought back")));
    EXPECT_EQ(templates_.addOffered(), QString{});
    const auto all = store_.setting_templates().value();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_NE(all.front().id, id_);
}

TEST_F(TemplateViewModelTest, a_template_goes_to_a_file_and_comes_back_as_it_was) {
    EXPECT_EQ(enter("period", "label", "Round"), QString{});
    const QString said = page_->writeTo(documents());
    ASSERT_TRUE(said.startsWith(QStringLiteral("Written to "))) << said.toStdString();
    templates_.lookForFiles();
    ASSERT_EQ(templates_.files().size(), 1);
    EXPECT_EQ(templates_.lookAt(templates_.files().front()), QString{});
    EXPECT_EQ(templates_.offered()["name"].toString(), page_->name());
    EXPECT_TRUE(templates_.offered()["lines"].toStringList().contains(QStringLiteral("Round (Period)")));
    EXPECT_NE(templates_.offered()["known"].toString(), QString{}) << "it is here already";
    const auto before = store_.setting_templates().value().size();
    EXPECT_EQ(templates_.addOffered(), QString{});
    const auto all = store_.setting_templates().value();
    ASSERT_EQ(all.size(), before + 1);
    for (auto each : all) {
        EXPECT_EQ(each.name, each.id == id_ ? kept().name : kept().name + " (2)") << "two of one name";
        each.id = id_;
        each.name = kept().name;
        EXPECT_EQ(each, kept());
    }
    EXPECT_TRUE(templates_.offered().isEmpty());
}

TEST_F(TemplateViewModelTest, a_template_from_elsewhere_keeps_its_id) {
    auto foreign = generic_template(TimerKind::on_demand);
    foreign.id = Id{"made-elsewhere"};
    EXPECT_EQ(templates_.lookAt(in_file(QByteArray::fromStdString(template_file_text(foreign)))), QString{});
    EXPECT_EQ(templates_.offered()["known"].toString(), QString{});
    EXPECT_FALSE(store_.setting_template(foreign.id)) << "it was added before anybody said yes";
    EXPECT_EQ(templates_.addOffered(), QString{});
    EXPECT_EQ(store_.setting_template(foreign.id).value(), foreign);
}

TEST_F(TemplateViewModelTest, a_bad_file_says_why_and_adds_nothing) {
    auto later = QByteArray::fromStdString(template_file_text(kept()));
    later.replace("\"format_version\": 1", "\"format_version\": 2");
    const auto before = store_.setting_templates().value().size();
    for (const auto& [text, why] : {std::pair{later, "later"}, {QByteArray{"no template"}, "JSON"}}) {
        const QString said = templates_.lookAt(in_file(text));
        EXPECT_TRUE(said.contains(QLatin1String(why))) << said.toStdString();
        EXPECT_TRUE(templates_.offered().isEmpty());
    }
    EXPECT_NE(templates_.lookAt(documents() + QStringLiteral("/not-there.json")), QString{});
    EXPECT_EQ(store_.setting_templates().value().size(), before);
}

TEST_F(TemplateViewModelTest, a_link_is_not_offered_not_read_and_not_written_through) {
    auto foreign = generic_template(TimerKind::on_demand);
    foreign.id = Id{"made-elsewhere"};
    const QString file = in_file(QByteArray::fromStdString(template_file_text(foreign)));
    const QString link = documents() + QStringLiteral("/link.json");
    ASSERT_TRUE(QFile::link(file, link));
    templates_.lookForFiles();
    EXPECT_EQ(templates_.files(), QStringList{file});
    EXPECT_TRUE(templates_.lookAt(link).contains(QStringLiteral("a link to another file")));
    EXPECT_TRUE(templates_.offered().isEmpty());

    // The name that the template's file would take, held by a link to where nothing is yet.
    ASSERT_TRUE(page_->writeTo(documents()).startsWith(QStringLiteral("Written to ")));
    templates_.lookForFiles();
    ASSERT_EQ(templates_.files().size(), 2);
    QString written;
    for (const auto& each : templates_.files()) {
        written = each == file ? written : each;
    }
    const QString elsewhere = folder_.filePath(QStringLiteral("elsewhere"));
    ASSERT_TRUE(QFile::remove(written) && QFile::link(elsewhere, written));
    EXPECT_TRUE(page_->writeTo(documents()).startsWith(QStringLiteral("Written to ")));
    EXPECT_FALSE(QFile::exists(elsewhere)) << "the link was followed";
    templates_.lookForFiles();
    EXPECT_EQ(templates_.files().size(), 2) << "a file of its own beside the link";
}

TEST_F(TemplateViewModelTest, what_a_template_names_is_shown_and_never_opened) {
    auto foreign = generic_template(TimerKind::on_demand);
    foreign.id = Id{"made-elsewhere"};
    foreign.name = "../../outside";
    foreign.note = "file:///etc/hostname";
    foreign.settings.front().label = "<img src=x>";
    EXPECT_EQ(templates_.lookAt(in_file(QByteArray::fromStdString(template_file_text(foreign)))), QString{});
    EXPECT_EQ(templates_.offered()["name"].toString(), "../../outside");
    EXPECT_EQ(templates_.offered()["note"].toString(), "file:///etc/hostname");
    EXPECT_EQ(templates_.addOffered(), QString{});
    TemplateViewModel page{context_, foreign, folders(), nullptr};
    ASSERT_TRUE(page.writeTo(documents()).startsWith(QStringLiteral("Written to ")));
    EXPECT_EQ(QDir{folder_.path()}.entryList({QStringLiteral("*outside*")}, QDir::AllEntries).size(), 0);
    templates_.lookForFiles();
    EXPECT_EQ(templates_.files().size(), 2) << "in the folder that was chosen, whatever the name says";
}

TEST_F(TemplateViewModelTest, a_template_that_is_not_whole_is_not_written) {
    EXPECT_EQ(page_->use(QStringLiteral("base_on_time"), false), QString{});
    EXPECT_TRUE(page_->writeTo(documents()).startsWith(QStringLiteral("Not written")));
    templates_.lookForFiles();
    EXPECT_TRUE(templates_.files().isEmpty());
}

TEST_F(TemplateViewModelTest, another_template_of_the_same_name_gets_a_file_of_its_own) {
    EXPECT_TRUE(page_->writeTo(documents()).startsWith(QStringLiteral("Written")));
    const auto second = templates_.make_from(generic_template(TimerKind::trimmed).id).value();
    ASSERT_NE(second.name, kept().name);
    TemplateViewModel other{context_, second, folders(), nullptr};
    EXPECT_EQ(other.enter(QStringLiteral("name"), page_->name()), QString{});
    EXPECT_TRUE(other.writeTo(documents()).startsWith(QStringLiteral("Written")));
    EXPECT_TRUE(other.writeTo(documents()).startsWith(QStringLiteral("Written")));
    templates_.lookForFiles();
    EXPECT_EQ(templates_.files().size(), 2);
}

TEST_F(TemplateViewModelTest, a_timer_offers_the_whole_templates_and_takes_over_what_one_says) {
    const auto other = templates_.make_from(generic_template(TimerKind::on_demand).id).value();
    VisitRecord record{context_, file_, nullptr};
    ASSERT_EQ(record.house().timers.front().kind, TimerKind::trimmed);
    HouseViewModel house{record, nullptr};
    auto* form = house.timers()->data(house.timers()->index(0), PartsModel::FormRole).value<FormModel*>();
    const auto row_of = [&](const char* key) {
        int row = 0;
        while (row < form->count() &&
               form->data(form->index(row), FormModel::KeyRole).toString() != QLatin1String(key)) {
            ++row;
        }
        return row;
    };
    const auto offered = [&] {
        QStringList ids;
        for (const auto& choice :
             form->data(form->index(row_of("template_id")), FormModel::ChoicesRole).toList()) {
            ids.append(choice.toMap()["value"].toString());
        }
        ids.sort();
        return ids;
    };
    const auto own = QString::fromStdString(id_.text);
    const auto another = QString::fromStdString(other.id.text);
    QStringList both{QString{}, own, another};
    both.sort();
    EXPECT_EQ(offered(), both);
    EXPECT_FALSE(form->data(form->index(row_of("kind")), FormModel::FixedRole).toBool());
    EXPECT_EQ(form->enter(row_of("template_id"), another), QString{});
    const auto chosen = store_.house(file_.house.id).value().timers.front();
    EXPECT_EQ(chosen.template_id, other.id);
    EXPECT_EQ(chosen.controller, other);
    EXPECT_EQ(chosen.kind, TimerKind::on_demand);
    EXPECT_TRUE(form->data(form->index(row_of("kind")), FormModel::FixedRole).toBool());
    EXPECT_EQ(row_of("resolution"), form->count()) << "it has no on-time";

    EXPECT_EQ(form->enter(row_of("template_id"), own), QString{});
    EXPECT_EQ(store_.house(file_.house.id).value().timers.front().kind, TimerKind::trimmed);
    EXPECT_EQ(page_->use(QStringLiteral("period"), false), QString{});
    record.changed();
    EXPECT_EQ(offered(), both) << "what is chosen stays in sight";
    EXPECT_EQ(form->enter(row_of("template_id"), QString{}), QString{});
    record.changed();
    EXPECT_FALSE(offered().contains(own)) << "it is not whole any more";
    const auto freed = store_.house(file_.house.id).value().timers.front();
    EXPECT_TRUE(freed.template_id.empty());
    EXPECT_FALSE(freed.controller);
}

}  // namespace
}  // namespace wetfront::ui
