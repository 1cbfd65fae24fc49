// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>
#include <QSignalSpy>
#include <map>

#include "desk.h"
#include "format/language.h"
#include "support/full_disk.h"
#include "ui_support/fake_awake.h"
#include "viewmodels/session_view_model.h"

namespace wetfront::ui {
namespace {

/// A session whose choices are kept in the hand, on a system that speaks English.
class SessionShownTest : public Desk {
protected:
    ~SessionShownTest() override { QCoreApplication::removeTranslator(texts_.get()); }

    std::unique_ptr<SessionViewModel> begin() {
        return std::make_unique<SessionViewModel>(
            context_, presses_, awake_, SheetPaper{},
            Preferences{[this](const QString& key) { return kept_[key]; },
                        [this](const QString& key, const QString& value) { kept_[key] = value; },
                        [this](const QString& chosen) { return speak(chosen); }},
            false, [] { return QStringList{}; }, nullptr);
    }
    QString speak(const QString& chosen) {
        QCoreApplication::removeTranslator(texts_.get());
        texts_ = texts_in(chosen.isEmpty() ? QStringLiteral("en") : chosen);
        QCoreApplication::installTranslator(texts_.get());
        return chosen.isEmpty() ? QStringLiteral("en") : chosen;
    }

    std::map<QString, QString> kept_;
    std::shared_ptr<QTranslator> texts_ = texts_in(QStringLiteral("en"));
    FakeAwake awake_;
};

TEST_F(SessionShownTest, the_languages_are_named_in_themselves_below_that_of_the_system) {
    const auto session = begin();
    QStringList names;
    for (const auto& language : session->languages()) {
        names.append(language.toMap().value("text").toString());
    }
    EXPECT_EQ(names, (QStringList{"As the system", "English", QString::fromUtf8("español")}));
    EXPECT_EQ(session->language(), QString{});
}

TEST_F(SessionShownTest, a_language_is_spoken_at_once_on_the_step_that_one_is_at) {
    const auto session = begin();
    session->openVisit("visit-at-hand");
    session->visit()->goTo(static_cast<int>(Step::time_the_water));
    const QSignalSpy told{session.get(), &SessionViewModel::languageChanged};
    session->setLanguage("es");
    ASSERT_NE(session->visit(), nullptr);
    EXPECT_EQ(session->visit()->step(), static_cast<int>(Step::time_the_water));
    EXPECT_EQ(session->visit()->stepTitle(), "Tiempo del agua");
    EXPECT_EQ(session->visit()->sheet()->language(), "es") << "of a sheet for which none was chosen";
    EXPECT_EQ(told.count(), 1);
    session->setLanguage("en");
    EXPECT_EQ(session->visit()->stepTitle(), "Time the water");
}

TEST_F(SessionShownTest, a_language_is_kept_for_the_next_start) {
    begin()->setLanguage("es");
    speak({});
    const auto again = begin();
    EXPECT_EQ(again->language(), "es");
    again->openVisit("visit-at-hand");
    EXPECT_EQ(again->visit()->stepTitle(), "Seguridad");
}

TEST_F(SessionShownTest, a_running_stopwatch_runs_on_in_another_language) {
    const auto session = begin();
    session->openVisit("visit-at-hand");
    session->visit()->stopwatch()->mark();
    session->setLanguage("es");
    EXPECT_TRUE(session->visit()->stopwatch()->running());
    EXPECT_EQ(stored().marks.size(), 1U);
    EXPECT_TRUE(awake_.kept);
}

TEST_F(SessionShownTest, the_language_waits_while_presses_are_only_on_screen) {
    const auto session = begin();
    session->openVisit("visit-at-hand");
    {
        const test::FullDisk full{0};
        session->visit()->stopwatch()->mark();
        ASSERT_TRUE(session->visit()->waits_for_storage());
        session->setLanguage("es");
    }
    EXPECT_EQ(session->language(), QString{});
    EXPECT_EQ(session->problem(), "Presses are not stored yet. Choose the language once they are.");
    EXPECT_TRUE(session->visit()->waits_for_storage());
    session->visit()->storeNow();
    session->setLanguage("es");
    EXPECT_EQ(session->language(), "es");
    EXPECT_EQ(stored().marks.size(), 1U);
}

TEST_F(SessionShownTest, the_houses_and_templates_in_sight_are_said_in_the_language) {
    const auto session = begin();
    session->showTemplates();
    session->setLanguage("es");
    EXPECT_EQ(session->place(), "templates");
    const auto generic = session->templates()->generic();
    ASSERT_FALSE(generic.isEmpty());
    const auto made = generic.front().toMap().value("id").toString();
    session->makeTemplate(made);
    ASSERT_NE(session->described(), nullptr);
    session->setLanguage("en");
    EXPECT_EQ(session->place(), "template");
    EXPECT_EQ(session->described()->groups().front().toMap().value("title").toString(), "When pads may run");
    session->setLanguage("es");
    EXPECT_EQ(session->described()->groups().front().toMap().value("title").toString(),
              QString::fromUtf8("Cuándo trabajan los paneles"));
}

}  // namespace
}  // namespace wetfront::ui
