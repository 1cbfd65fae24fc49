// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusServiceWatcher>
#include <functional>

#include "viewmodels/awake.h"

namespace wetfront::ui {

/// Holds off the dark screen through the desktop (org.freedesktop.ScreenSaver, or where it is missing the
/// portal org.freedesktop.portal.Inhibit), and sleep, by time and by the lid, through org.freedesktop.login1.
/// Each may be missing: problem() says so. A service that comes back is asked again.
class BusAwake final : public Awake {
public:
    BusAwake(const QDBusConnection& session, const QDBusConnection& system, QObject* parent);
    ~BusAwake() override;

    void keep(bool wanted) override;
    [[nodiscard]] QString problem() const override;

private:
    /// One of the two things that are held.
    struct Hold {
        int round = 0;  ///< counts the times it was asked for; an answer to an earlier time is given back
        bool missing = false;
        std::function<void()> give_back;  ///< empty: not held
    };
    using Answered = std::function<void(const QDBusMessage& answer)>;

    void watch(QDBusServiceWatcher& watcher, Hold& which, void (BusAwake::*ask)());
    void call(const QDBusConnection& bus, const QDBusMessage& message, Answered answered);
    void ask_screen();
    void ask_portal(int round);
    void ask_sleep();
    void ask_sleep_without_lid(int round);
    void take(Hold& which, int round, std::function<void()> give_back);
    void miss(Hold& which, int round);
    static void let_go(Hold& which);

    QDBusConnection session_;
    QDBusConnection system_;
    QDBusServiceWatcher screen_services_;
    QDBusServiceWatcher sleep_services_;
    bool wanted_ = false;
    Hold screen_;
    Hold sleep_;
};

}  // namespace wetfront::ui
