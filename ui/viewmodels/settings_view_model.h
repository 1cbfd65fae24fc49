// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>

#include "rules/rules.h"
#include "viewmodels/form_model.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The steps Settings found and Settings left: what stands in each timer, in the four groups in which a
/// grower asks; where its controller is described, what that asks for, as it does.
class SettingsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QVariantList timers READ timers NOTIFY changed)  ///< {value, text}
    Q_PROPERTY(QString timer READ timer WRITE chooseTimer NOTIFY changed)
    Q_PROPERTY(wetfront::ui::FormModel* whenPadsMayRun READ whenPadsMayRun CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* howLong READ howLong CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* howItAdapts READ howItAdapts CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* rinse READ rinse CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* evidence READ evidence CONSTANT)
    Q_PROPERTY(QVariantList differences READ differences NOTIFY
                   changed)  ///< of what is left from the advice: {label, text, meaning}
    Q_PROPERTY(wetfront::ui::FormModel* whyDifferent READ whyDifferent CONSTANT)  ///< the person's reason
    Q_PROPERTY(bool canCopy READ canCopy NOTIFY changed)  ///< advice may be taken over into what is left

public:
    SettingsViewModel(VisitRecord& record, WhichSettings which, QObject* parent);

    [[nodiscard]] QVariantList timers() const;
    [[nodiscard]] QString timer() const;
    void chooseTimer(const QString& id);
    [[nodiscard]] FormModel* whenPadsMayRun() const { return when_; }
    [[nodiscard]] FormModel* howLong() const { return how_long_; }
    [[nodiscard]] FormModel* howItAdapts() const { return adapts_; }
    [[nodiscard]] FormModel* rinse() const { return rinse_; }
    [[nodiscard]] FormModel* evidence() const { return evidence_; }
    [[nodiscard]] FormModel* whyDifferent() const { return why_different_; }
    [[nodiscard]] QVariantList differences();
    [[nodiscard]] bool canCopy() const;

    /// Settings left: what is advised where there is advice, else what was left or found. Says what is wrong,
    /// or nothing.
    Q_INVOKABLE QString copyAdvice();
    /// What copyAdvice() would replace or take out: "Period: 6 min, becomes 5 min". Empty: no entry is lost.
    Q_INVOKABLE QStringList overwritten();

signals:
    void changed();

private:
    void follow_record();
    void build_forms();
    void build_forms_of_controller();
    void build_reason();
    [[nodiscard]] const SettingTemplate* controller() const;  ///< null: the timer's is not described
    [[nodiscard]] const TemplateSetting* on_controller(Setting setting) const;
    [[nodiscard]] QString setting_label(Setting setting, std::size_t row) const;
    [[nodiscard]] QString shown(Setting setting, const AnyQuantity& value) const;
    [[nodiscard]] TimerSettings& settings();
    [[nodiscard]] std::vector<TimerSettings>& entries();
    [[nodiscard]] Result<void> store_settings();
    void note_change();
    [[nodiscard]] std::vector<FormField> trim_lines();
    void put_beside(std::vector<FormField>& lines);
    [[nodiscard]] QString beside(std::string_view key, std::size_t row);
    [[nodiscard]] QString beside_on_controller(TemplateKey key, std::size_t row);
    [[nodiscard]] TimerSettings with_advice(const TimerAdvice& advice);

    VisitRecord& record_;
    WhichSettings which_;
    Id timer_;
    TimerSettings known_;      ///< as the record last held them
    TimerSettings new_entry_;  ///< behind the forms while nothing is entered for the timer
    FormModel* when_;
    FormModel* how_long_;
    FormModel* adapts_;
    FormModel* rinse_;
    FormModel* evidence_;
    FormModel* why_different_;
};

}  // namespace wetfront::ui
