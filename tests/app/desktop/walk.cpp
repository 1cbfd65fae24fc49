// SPDX-License-Identifier: Apache-2.0
#include "walk.h"

#include <gtest/gtest.h>

#include <QTest>
#include <cmath>

#include "ui_support/qml_window.h"

namespace wetfront::ui {

Walk::Walk(QSize window, std::function<QString(const QString&)> speak, Media media) {
    // Synthetic input carries stamps of its own counting; far from this clock they are not believed, as they
    // should not be.
    clock_.monotonic = 1'000'000'000;
    auto opened = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
    if (!opened) {
        throw std::runtime_error{opened.error().text()};
    }
    store_ = std::make_unique<Store>(std::move(opened).value());
    const Preferences preferences{[this](const QString& key) { return kept_[key]; },
                                  [this](const QString& key, const QString& value) { kept_[key] = value; },
                                  std::move(speak)};
    program_ =
        std::make_unique<Program>(*store_, clock_, preferences, awake_, documents(), false, std::move(media));
    if (!program_->show()) {
        throw std::runtime_error{"no window"};
    }
    program_->window()->resize(window);
    show_and_wait(*program_->window());
    hand_ = std::make_unique<Hand>(*program_->window());
}

void Walk::enter(const QString& line, const QString& number, const QString& unit) {
    hand_->click(line);
    for (const QChar digit : number) {
        hand_->click(digit == QLatin1Char('.') ? QStringLiteral("point") : QString{digit});
    }
    if (!unit.isEmpty() && hand_->shows(unit)) {
        hand_->click(unit);
    }
    hand_->click(QStringLiteral("Done"));
    EXPECT_FALSE(hand_->shows(QStringLiteral("entry")))
        << "the pad did not take " << number.toStdString() << ' ' << unit.toStdString() << " for "
        << line.toStdString();
}

void Walk::write(const QString& field, const QString& text) {
    hand_->click(field);
    hand_->type(text);
    hand_->key(Qt::Key_Return);
}

void Walk::pass(double seconds) {
    clock_.advance_ms(std::llround(seconds * 1000.0));
}

void Walk::mark_after(double seconds, const QString& text) {
    pass(seconds);
    hand_->press(text);
    const auto* visit = session().visit();
    // The button says what comes next by now.
    hand_->release(visit->step() == static_cast<int>(Step::proof) ? visit->proof()->markText()
                                                                  : visit->stopwatch()->markText());
}

void Walk::go_to(Step step) {
    const auto index = static_cast<int>(step);
    const QString title = session().visit()->steps()->at(step).title;
    hand_->click(QStringLiteral("%1. %2").arg(index + 1).arg(title));
    ASSERT_EQ(session().visit()->step(), index);
    // As the event loop does before a person can press again: the page that was left is gone.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Walk::tick_all(Step step) {
    for (const auto& line : checklist(step)) {
        hand_->click(QString::fromStdString(in_english(line.text, UnitSystem::us)));
    }
    EXPECT_TRUE(open_lines(step, session().visit()->file().visit).empty());
}

VisitFile Walk::stored_visit() {
    const auto file = store_->visit_file(session().visit()->file().visit.id);
    if (!file) {
        throw std::runtime_error{file.error().text()};
    }
    return file.value();
}

}  // namespace wetfront::ui
