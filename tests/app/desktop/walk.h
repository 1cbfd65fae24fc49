// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QTemporaryDir>
#include <functional>
#include <map>
#include <memory>

#include "desktop/program.h"
#include "support/fake_clock.h"
#include "ui_support/fake_awake.h"
#include "ui_support/hand.h"

namespace wetfront::ui {

/// The program on a record file of its own, with a clock in the hand, and the hand that works its window.
class Walk {
public:
    /// `speak`: how a language is chosen (Preferences); none: English. `media`: what is plugged in.
    explicit Walk(QSize window, std::function<QString(const QString&)> speak = {},
                  Media media = plugged_in_media);

    Hand& hand() { return *hand_; }
    Store& store() { return *store_; }
    SessionViewModel& session() { return program_->session(); }
    FakeAwake& awake() { return awake_; }
    test::FakeClock& clock() { return clock_; }
    [[nodiscard]] QString documents() const { return folder_.filePath(QStringLiteral("documents")); }

    /// Opens the line of that name and types digits and a unit on the number pad.
    void enter(const QString& line, const QString& number, const QString& unit);
    /// Types letters into the field of that name.
    void write(const QString& field, const QString& text);
    /// Lets that many seconds pass, then presses the big button, which must say `text`.
    void mark_after(double seconds, const QString& text);
    void pass(double seconds);
    void go_to(Step step);
    void tick_all(Step step);
    [[nodiscard]] VisitFile stored_visit();

private:
    QTemporaryDir folder_;
    test::FakeClock clock_;
    FakeAwake awake_;
    std::map<QString, QString> kept_;  ///< preferences
    std::unique_ptr<Store> store_;
    std::unique_ptr<Program> program_;
    std::unique_ptr<Hand> hand_;
};

}  // namespace wetfront::ui
