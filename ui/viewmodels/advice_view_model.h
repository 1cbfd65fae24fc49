// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>

#include "viewmodels/visit_record.h"
#include "viewmodels/what_if_view_model.h"

namespace wetfront::ui {

/// The step Advice: for one timer, found, advised and left side by side, why, and what is wrong with what was
/// found.
class AdviceViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QVariantList timers READ timers NOTIFY changed)  ///< {value, text}
    Q_PROPERTY(QString timer READ timer WRITE chooseTimer NOTIFY changed)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed)
    Q_PROPERTY(QString truth READ truth NOTIFY changed)
    Q_PROPERTY(QString truthSource READ truthSource NOTIFY changed)
    /// {title, rows: [{label, trade (the trade's name where the label is a firm's own), found, advised, left,
    /// brief, foundDiffers, leftDiffers, setting}]}. Where no value is advised, `brief` says why; the differs
    /// are what the difference from the advice means.
    Q_PROPERTY(QVariantList groups READ groups NOTIFY changed)
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)  ///< {name, decides, text}
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)
    Q_PROPERTY(QStringList assumed READ assumed NOTIFY changed)
    Q_PROPERTY(QVariantList foundFindings READ foundFindings NOTIFY
                   changed)  ///< {severity, message, remedy, source, causes}
    Q_PROPERTY(QVariantList foundSettingFindings READ foundSettingFindings NOTIFY
                   changed)                                                 ///< of the timer's settings only
    Q_PROPERTY(QVariantList leftFindings READ leftFindings NOTIFY changed)  ///< of the timer's settings only
    Q_PROPERTY(QVariantList strips READ strips NOTIFY changed)  ///< one a set of settings, keys of CycleStrip
    /// Name of the timer's setting template; empty where it has none.
    Q_PROPERTY(QString controller READ controller NOTIFY changed)
    /// What to enter there, in its order: {label, number, remarks, held}; not held: what it cannot do.
    Q_PROPERTY(QVariantList toEnter READ toEnter NOTIFY changed)
    Q_PROPERTY(wetfront::ui::WhatIfViewModel* whatIf READ whatIf CONSTANT)

public:
    AdviceViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] QVariantList timers() const;
    [[nodiscard]] QString timer() const;
    void chooseTimer(const QString& id);
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString truth() const;
    [[nodiscard]] QString truthSource() const;
    [[nodiscard]] QVariantList groups() const;
    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] QStringList missing() const;
    [[nodiscard]] QStringList notes() const;
    [[nodiscard]] QStringList assumed() const;
    [[nodiscard]] QVariantList foundFindings() const;
    [[nodiscard]] QVariantList foundSettingFindings() const;
    [[nodiscard]] QVariantList leftFindings() const;
    [[nodiscard]] QVariantList strips() const;
    [[nodiscard]] QString controller() const;
    [[nodiscard]] QVariantList toEnter() const;
    [[nodiscard]] WhatIfViewModel* whatIf() const { return what_if_; }

    /// Why a setting is what it is: {title, explanation, formula, inputs, result, rounding, source}; empty
    /// for settings that advice does not cover.
    Q_INVOKABLE QVariantMap reason(const QString& setting) const;

signals:
    void changed();

private:
    void follow_record();
    [[nodiscard]] const TimerAdvice* advice() const;
    [[nodiscard]] const SettingTemplate* described() const;
    [[nodiscard]] QVariantMap controller_row(const TemplateLine& line, const TimerSettings& found,
                                             const TimerSettings& left) const;
    [[nodiscard]] QStringList texts(const std::vector<Message>& messages) const;

    VisitRecord& record_;
    Id timer_;
    WhatIfViewModel* what_if_;
};

}  // namespace wetfront::ui
