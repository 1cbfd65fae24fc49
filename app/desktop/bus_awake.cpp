// SPDX-License-Identifier: Apache-2.0
#include "desktop/bus_awake.h"

#include <QCoreApplication>
#include <QDBusError>
#include <QDBusObjectPath>
#include <QDBusPendingCall>
#include <QDBusPendingCallWatcher>
#include <QDBusUnixFileDescriptor>
#include <QVariantMap>
#include <optional>
#include <utility>

namespace wetfront::ui {
namespace {

constexpr QLatin1String screen_service{"org.freedesktop.ScreenSaver"};
constexpr QLatin1String portal_service{"org.freedesktop.portal.Desktop"};
constexpr QLatin1String login_service{"org.freedesktop.login1"};
constexpr uint portal_suspend_and_idle = 4U | 8U;  // XDG desktop portal, Inhibit: "Suspend" 4, "Idle" 8

class AwakeWords {
    Q_DECLARE_TR_FUNCTIONS(AwakeWords)
};

QString program() {
    return QStringLiteral("Wetfront");
}

QString reason() {
    return AwakeWords::tr("a reading is being timed");
}

QDBusMessage to_screen(const QString& method) {
    return QDBusMessage::createMethodCall(screen_service, QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          screen_service, method);
}

QDBusMessage to_login(const QString& what) {
    auto message = QDBusMessage::createMethodCall(login_service, QStringLiteral("/org/freedesktop/login1"),
                                                  QStringLiteral("org.freedesktop.login1.Manager"),
                                                  QStringLiteral("Inhibit"));
    message << what << program() << reason() << QStringLiteral("block");
    return message;
}

/// The first value of an answer; invalid if it is a refusal or of another type.
template <class T>
std::optional<T> value_of(const QDBusMessage& answer) {
    if (answer.type() != QDBusMessage::ReplyMessage || answer.arguments().isEmpty() ||
        !answer.arguments().constFirst().canConvert<T>()) {
        return std::nullopt;
    }
    return answer.arguments().constFirst().value<T>();
}

}  // namespace

BusAwake::BusAwake(const QDBusConnection& session, const QDBusConnection& system, QObject* parent)
    : Awake{parent}, session_{session}, system_{system} {
    screen_services_.setConnection(session_);
    screen_services_.setWatchedServices({screen_service, portal_service});
    sleep_services_.setConnection(system_);
    sleep_services_.setWatchedServices({login_service});
    watch(screen_services_, screen_, &BusAwake::ask_screen);
    watch(sleep_services_, sleep_, &BusAwake::ask_sleep);
}

BusAwake::~BusAwake() {
    let_go(screen_);
    let_go(sleep_);
}

// What a service held is gone with it.
void BusAwake::watch(QDBusServiceWatcher& watcher, Hold& which, void (BusAwake::*ask)()) {
    connect(&watcher, &QDBusServiceWatcher::serviceOwnerChanged, this, [this, &which, ask] {
        if (wanted_) {
            let_go(which);
            (this->*ask)();
        }
    });
}

void BusAwake::call(const QDBusConnection& bus, const QDBusMessage& message, Answered answered) {
    if (!bus.isConnected()) {  // Qt would never answer
        answered(QDBusMessage::createError(QDBusError::Disconnected, QString{}));
        return;
    }
    auto* waiting = new QDBusPendingCallWatcher{bus.asyncCall(message), this};
    connect(waiting, &QDBusPendingCallWatcher::finished, this,
            [answered = std::move(answered)](QDBusPendingCallWatcher* done) {
                done->deleteLater();
                answered(done->reply());
            });
}

void BusAwake::keep(bool wanted) {
    if (wanted == wanted_) {
        return;
    }
    wanted_ = wanted;
    screen_.missing = false;
    sleep_.missing = false;
    if (wanted) {
        ask_screen();
        ask_sleep();
        return;
    }
    let_go(screen_);
    let_go(sleep_);
    emit problem_changed();
}

void BusAwake::ask_screen() {
    const int round = ++screen_.round;
    auto message = to_screen(QStringLiteral("Inhibit"));
    message << program() << reason();
    call(session_, message, [this, round](const QDBusMessage& answer) {
        const auto cookie = value_of<uint>(answer);
        if (!cookie) {
            ask_portal(round);
            return;
        }
        take(screen_, round, [session = session_, cookie] {
            auto given_back = to_screen(QStringLiteral("UnInhibit"));
            given_back << *cookie;
            session.send(given_back);
        });
    });
}

void BusAwake::ask_portal(int round) {
    auto message = QDBusMessage::createMethodCall(
        portal_service, QStringLiteral("/org/freedesktop/portal/desktop"),
        QStringLiteral("org.freedesktop.portal.Inhibit"), QStringLiteral("Inhibit"));
    message << QString{} << portal_suspend_and_idle << QVariantMap{{QStringLiteral("reason"), reason()}};
    call(session_, message, [this, round](const QDBusMessage& answer) {
        const auto handle = value_of<QDBusObjectPath>(answer);
        if (!handle) {
            miss(screen_, round);
            return;
        }
        take(screen_, round, [session = session_, handle] {
            session.send(QDBusMessage::createMethodCall(portal_service, handle->path(),
                                                        QStringLiteral("org.freedesktop.portal.Request"),
                                                        QStringLiteral("Close")));
        });
    });
}

void BusAwake::ask_sleep() {
    const int round = ++sleep_.round;
    call(system_, to_login(QStringLiteral("idle:sleep:handle-lid-switch")),
         [this, round](const QDBusMessage& answer) {
             if (const auto lock = value_of<QDBusUnixFileDescriptor>(answer)) {
                 // It holds for as long as somebody keeps the descriptor.
                 take(sleep_, round, [kept = lock] {});
             } else {
                 ask_sleep_without_lid(round);
             }
         });
}

// Some systems let only an administrator keep the lid from being noticed.
void BusAwake::ask_sleep_without_lid(int round) {
    call(system_, to_login(QStringLiteral("idle:sleep")), [this, round](const QDBusMessage& answer) {
        if (const auto lock = value_of<QDBusUnixFileDescriptor>(answer)) {
            take(sleep_, round, [kept = lock] {});
        } else {
            miss(sleep_, round);
        }
    });
}

void BusAwake::take(Hold& which, int round, std::function<void()> give_back) {
    if (!wanted_ || round != which.round) {
        give_back();
        return;
    }
    which.give_back = std::move(give_back);
    which.missing = false;
    emit problem_changed();
}

void BusAwake::miss(Hold& which, int round) {
    if (wanted_ && round == which.round) {
        which.missing = true;
        emit problem_changed();
    }
}

void BusAwake::let_go(Hold& which) {
    if (const auto give_back = std::exchange(which.give_back, nullptr)) {
        give_back();
    }
    ++which.round;
}

QString BusAwake::problem() const {
    if (screen_.missing && sleep_.missing) {
        return AwakeWords::tr(
            "This tablet may go dark and sleep: touch it now and then. The time goes on all the same.");
    }
    if (screen_.missing) {
        return AwakeWords::tr(
            "This screen may go dark: touch it now and then. The time goes on all the same.");
    }
    return sleep_.missing
               ? AwakeWords::tr(
                     "This tablet may sleep: keep its lid open and touch it now and then. The time "
                     "goes on all the same.")
               : QString{};
}

}  // namespace wetfront::ui
