// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// One setting that a finger moves. Lives in its view model; GUI thread.
class WhatIfSetting : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by WhatIfViewModel")
    Q_PROPERTY(bool there READ there NOTIFY changed)  ///< the timer has that setting
    Q_PROPERTY(QString label READ label NOTIFY changed)
    Q_PROPERTY(double from READ from NOTIFY changed)          ///< s
    Q_PROPERTY(double to READ to NOTIFY changed)              ///< s
    Q_PROPERTY(double step READ step NOTIFY changed)          ///< s, smallest step of the timer
    Q_PROPERTY(double value READ value NOTIFY moved)          ///< s
    Q_PROPERTY(QString text READ text NOTIFY moved)           ///< "85 s"
    Q_PROPERTY(QVariantList ticks READ ticks NOTIFY changed)  ///< {at (s), text, advised (bool)}

public:
    struct Scale {
        double from = 1.0;
        double to = 2.0;
        double step = 1.0;
    };

    WhatIfSetting(Setting setting, const Formatter& formatter, QObject* parent);

    [[nodiscard]] bool there() const { return there_; }
    [[nodiscard]] QString label() const { return formatter_.text(label_of(setting_)); }
    [[nodiscard]] double from() const { return scale_.from; }
    [[nodiscard]] double to() const { return scale_.to; }
    [[nodiscard]] double step() const { return scale_.step; }
    [[nodiscard]] double value() const { return value_; }
    [[nodiscard]] QString text() const;
    [[nodiscard]] QVariantList ticks() const { return ticks_; }
    [[nodiscard]] Setting setting() const { return setting_; }

    /// Before the first move: where it may go, and what is marked along the way.
    void offer(const Scale& scale, QVariantList ticks, std::optional<double> value);
    /// Takes the nearest step to that value; values beyond the scale are not taken.
    Q_INVOKABLE void move(double value);
    void put(double value);

signals:
    void changed();
    void moved();
    void moved_by_hand();

private:
    Setting setting_;
    const Formatter& formatter_;
    bool there_ = false;
    Scale scale_;
    double value_ = 0.0;
    QVariantList ticks_;
};

/// What if: one timer's period and on-times are moved, and the cycle and the findings follow. It begins with
/// the advice (with what was found where there is none); nothing of it is stored. What does not depend on the
/// settings (timings, water, advice) is taken over from the visit, not worked out anew.
class WhatIfViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by AdviceViewModel")
    Q_PROPERTY(bool possible READ possible NOTIFY changed)        ///< the timer has a cycle to start from
    Q_PROPERTY(bool open READ open WRITE setOpen NOTIFY changed)  ///< only then anything is worked out
    Q_PROPERTY(bool moved READ moved NOTIFY derived)              ///< away from where it began
    Q_PROPERTY(bool fromAdvice READ fromAdvice NOTIFY changed)
    Q_PROPERTY(wetfront::ui::WhatIfSetting* period READ period CONSTANT)
    Q_PROPERTY(wetfront::ui::WhatIfSetting* onTime READ onTime CONSTANT)
    Q_PROPERTY(wetfront::ui::WhatIfSetting* ceiling READ ceiling CONSTANT)
    Q_PROPERTY(QVariantList strips READ strips NOTIFY derived)      ///< found, if it is known, and this one
    Q_PROPERTY(QVariantList findings READ findings NOTIFY derived)  ///< as finding_maps()

public:
    WhatIfViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] bool possible();
    [[nodiscard]] bool open() const { return open_; }
    void setOpen(bool open);
    [[nodiscard]] bool moved() const { return open_ && !(now_ == start_); }
    /// What the finger makes of the timer's settings; none where nothing is moved.
    [[nodiscard]] std::optional<TimerSettings> tried() const {
        return moved() ? std::optional{now_} : std::nullopt;
    }
    [[nodiscard]] bool fromAdvice();
    [[nodiscard]] WhatIfSetting* period() const { return period_; }
    [[nodiscard]] WhatIfSetting* onTime() const { return on_time_; }
    [[nodiscard]] WhatIfSetting* ceiling() const { return ceiling_; }
    [[nodiscard]] QVariantList strips() const { return strips_; }
    [[nodiscard]] QVariantList findings() const { return findings_; }

    /// Back to where it began.
    Q_INVOKABLE void back();

    /// The visit changed, or another timer is at hand.
    void follow(const Id& timer);

signals:
    void changed();
    void derived();

private:
    [[nodiscard]] std::optional<TimerSettings> beginning();
    [[nodiscard]] std::optional<TimerSettings> usual_found() const;
    void begin();
    void offer(WhatIfSetting& setting, WhatIfSetting::Scale scale);
    void take(const WhatIfSetting& setting);
    void derive();

    VisitRecord& record_;
    Id timer_;
    bool open_ = false;
    VisitFile file_;  ///< the visit with the moved settings as those left
    TimerSettings start_;
    TimerSettings now_;
    std::optional<double> ratio_;  ///< E_design / E_test
    QVariantList found_strip_;
    QVariantList strips_;
    QVariantList findings_;
    WhatIfSetting* period_;
    WhatIfSetting* on_time_;
    WhatIfSetting* ceiling_;
};

}  // namespace wetfront::ui
