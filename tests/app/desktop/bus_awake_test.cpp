// SPDX-License-Identifier: Apache-2.0
#include "desktop/bus_awake.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QDBusConnectionInterface>
#include <QDBusObjectPath>
#include <QDBusUnixFileDescriptor>
#include <QDBusVirtualObject>
#include <QProcess>
#include <QTest>
#include <cerrno>
#include <functional>
#include <memory>

namespace wetfront::ui {
namespace {

/// A message bus of the test's own, with nobody on it.
class Bus {
public:
    Bus() {
        daemon_.start(QStringLiteral("dbus-daemon"), {QStringLiteral("--session"), QStringLiteral("--nofork"),
                                                      QStringLiteral("--print-address")});
        daemon_.waitForReadyRead();
        address_ = QString::fromLatin1(daemon_.readLine()).trimmed();
    }
    ~Bus() {
        for (const auto& name : names_) {
            QDBusConnection::disconnectFromBus(name);
        }
        // Asked to end it takes its socket along.
        daemon_.terminate();
        daemon_.waitForFinished();
    }
    Bus(const Bus&) = delete;
    Bus& operator=(const Bus&) = delete;

    QDBusConnection connection() {
        names_.append(QStringLiteral("%1 %2").arg(address_).arg(names_.size()));
        return QDBusConnection::connectToBus(address_, names_.back());
    }

private:
    QProcess daemon_;
    QString address_;
    QStringList names_;
};

/// Plays the services of a desktop: writes down what it is asked.
class Service final : public QDBusVirtualObject {
public:
    Service(QDBusConnection bus, const QString& name, const QString& path)
        : bus_{std::move(bus)}, name_{name}, path_{path} {
        EXPECT_TRUE(bus_.registerVirtualObject(path, this, QDBusConnection::SubPath));
        EXPECT_TRUE(bus_.registerService(name_));
    }
    ~Service() override {
        bus_.unregisterService(name_);
        bus_.unregisterObject(path_, QDBusConnection::UnregisterTree);
    }

    [[nodiscard]] QString introspect(const QString&) const override { return {}; }

    bool handleMessage(const QDBusMessage& message, const QDBusConnection& bus) override {
        asked.append(message.member());
        first_words.append(message.arguments().value(0).toString());
        if (message.member() == QStringLiteral("Inhibit") && !refused.contains(first_words.back())) {
            bus.send(message.createReply(answer()));
        } else if (message.member() == QStringLiteral("Inhibit")) {
            bus.send(message.createErrorReply(QDBusError::AccessDenied, QStringLiteral("not allowed")));
        }
        return true;
    }

    QStringList asked;
    QStringList first_words;
    QStringList refused;
    std::function<QVariant()> answer = [] { return QVariant::fromValue(7U); };

private:
    QDBusConnection bus_;
    QString name_;
    QString path_;
};

class BusAwakeTest : public testing::Test {
protected:
    std::unique_ptr<Service> screen() {
        return std::make_unique<Service>(desktop_.connection(), QStringLiteral("org.freedesktop.ScreenSaver"),
                                         QStringLiteral("/org/freedesktop/ScreenSaver"));
    }
    std::unique_ptr<Service> portal() {
        auto service =
            std::make_unique<Service>(desktop_.connection(), QStringLiteral("org.freedesktop.portal.Desktop"),
                                      QStringLiteral("/org/freedesktop/portal/desktop"));
        service->answer = [] {
            return QVariant::fromValue(
                QDBusObjectPath{QStringLiteral("/org/freedesktop/portal/desktop/request/1")});
        };
        return service;
    }
    // The lock is the write end of a pipe: who holds it keeps the read end from coming to its end.
    std::unique_ptr<Service> login() {
        auto service =
            std::make_unique<Service>(machine_.connection(), QStringLiteral("org.freedesktop.login1"),
                                      QStringLiteral("/org/freedesktop/login1"));
        service->answer = [this] {
            int ends[2];
            EXPECT_EQ(pipe2(ends, O_CLOEXEC | O_NONBLOCK), 0);
            read_end_ = ends[0];
            const QDBusUnixFileDescriptor lock{ends[1]};
            close(ends[1]);
            return QVariant::fromValue(lock);
        };
        return service;
    }
    [[nodiscard]] bool sleep_is_held() const {
        char byte = 0;
        return read_end_ >= 0 && read(read_end_, &byte, 1) < 0 && errno == EAGAIN;
    }
    void TearDown() override {
        if (read_end_ >= 0) {
            close(read_end_);
        }
    }
    static bool soon(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 3000); }
    bool stays_well() {
        QTest::qWait(200);
        return awake_->problem().isEmpty();
    }

    // Asks once the news of who came on the bus is behind it: else it asks twice, as it should.
    void keep_awake() {
        for (const auto& bus : {session_, system_}) {
            EXPECT_FALSE(bus.interface()->isServiceRegistered(QStringLiteral("org.example.nobody")));
        }
        QCoreApplication::processEvents();
        awake_->keep(true);
    }

    Bus desktop_;
    Bus machine_;
    QDBusConnection session_ = desktop_.connection();
    QDBusConnection system_ = machine_.connection();
    int read_end_ = -1;
    std::unique_ptr<BusAwake> awake_ = std::make_unique<BusAwake>(session_, system_, nullptr);
};

TEST_F(BusAwakeTest, holds_screen_and_sleep_while_wanted_and_gives_both_back) {
    const auto desktop = screen();
    const auto machine = login();
    keep_awake();
    keep_awake();
    EXPECT_TRUE(soon([this] { return sleep_is_held(); }));
    EXPECT_TRUE(stays_well());
    EXPECT_EQ(desktop->asked, QStringList{QStringLiteral("Inhibit")});
    EXPECT_EQ(machine->first_words, QStringList{QStringLiteral("idle:sleep:handle-lid-switch")});
    awake_->keep(false);
    EXPECT_TRUE(soon([&] { return desktop->asked.contains(QStringLiteral("UnInhibit")); }));
    EXPECT_EQ(desktop->first_words.back(), QStringLiteral("7"));
    EXPECT_TRUE(soon([this] { return !sleep_is_held(); }));
}

TEST_F(BusAwakeTest, asks_the_portal_where_the_desktop_has_no_screen_service) {
    const auto desktop = portal();
    const auto machine = login();
    keep_awake();
    EXPECT_TRUE(soon([&] { return desktop->asked.contains(QStringLiteral("Inhibit")); }));
    EXPECT_TRUE(stays_well());
    awake_->keep(false);
    EXPECT_TRUE(soon([&] { return desktop->asked.contains(QStringLiteral("Close")); }));
}

TEST_F(BusAwakeTest, does_without_the_lid_where_that_is_not_allowed) {
    const auto desktop = screen();
    const auto machine = login();
    machine->refused = {QStringLiteral("idle:sleep:handle-lid-switch")};
    keep_awake();
    EXPECT_TRUE(soon([this] { return sleep_is_held(); }));
    EXPECT_EQ(machine->first_words.back(), QStringLiteral("idle:sleep"));
    EXPECT_TRUE(stays_well());
}

TEST_F(BusAwakeTest, says_in_words_that_nothing_can_be_held_and_only_while_it_is_wanted) {
    keep_awake();
    EXPECT_TRUE(soon([this] { return awake_->problem().contains(QStringLiteral("go dark and sleep")); }));
    awake_->keep(false);
    EXPECT_EQ(awake_->problem(), QString{});
}

TEST(NoBusTest, is_said_in_the_same_words) {
    BusAwake awake{QDBusConnection{QStringLiteral("nowhere")}, QDBusConnection{QStringLiteral("nowhere")},
                   nullptr};
    awake.keep(true);
    EXPECT_TRUE(awake.problem().contains(QStringLiteral("go dark and sleep")));
    awake.keep(false);
    EXPECT_EQ(awake.problem(), QString{});
}

TEST_F(BusAwakeTest, says_which_of_the_two_is_missing) {
    const auto machine = login();
    keep_awake();
    EXPECT_TRUE(
        soon([this] { return awake_->problem().startsWith(QStringLiteral("This screen may go dark")); }));
}

TEST_F(BusAwakeTest, takes_hold_again_when_a_service_comes_back) {
    auto desktop = screen();
    const auto machine = login();
    keep_awake();
    EXPECT_TRUE(soon([&] { return desktop->asked.size() == 1; }));
    desktop.reset();
    EXPECT_TRUE(soon([this] { return !awake_->problem().isEmpty(); }));
    desktop = screen();
    EXPECT_TRUE(soon([this] { return awake_->problem().isEmpty(); }));
    EXPECT_EQ(desktop->asked, QStringList{QStringLiteral("Inhibit")});
}

TEST_F(BusAwakeTest, an_answer_that_comes_when_nothing_is_wanted_any_more_is_given_back) {
    const auto desktop = screen();
    const auto machine = login();
    keep_awake();
    awake_->keep(false);
    EXPECT_TRUE(soon([&] { return desktop->asked.contains(QStringLiteral("UnInhibit")); }));
    EXPECT_TRUE(soon([this] { return read_end_ >= 0 && !sleep_is_held(); }));
}

TEST_F(BusAwakeTest, gives_back_what_it_holds_when_it_goes) {
    const auto desktop = screen();
    const auto machine = login();
    keep_awake();
    EXPECT_TRUE(soon([this] { return sleep_is_held(); }));
    EXPECT_TRUE(stays_well());
    awake_.reset();
    EXPECT_TRUE(soon([&] { return desktop->asked.contains(QStringLiteral("UnInhibit")); }));
    EXPECT_TRUE(soon([this] { return !sleep_is_held(); }));
}

}  // namespace
}  // namespace wetfront::ui
