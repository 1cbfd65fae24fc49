// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "viewmodels/parts_model.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The step House and banks: farm with its design day, house, pumps, banks and timers as forms.
class HouseViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(wetfront::ui::FormModel* farm READ farm CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* house READ house CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* day READ day CONSTANT)  ///< what a day hour by hour needs besides
    Q_PROPERTY(wetfront::ui::PartsModel* pumps READ pumps CONSTANT)
    Q_PROPERTY(wetfront::ui::PartsModel* banks READ banks CONSTANT)
    Q_PROPERTY(wetfront::ui::PartsModel* timers READ timers CONSTANT)

public:
    HouseViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] FormModel* farm() const { return farm_; }
    [[nodiscard]] FormModel* house() const { return house_; }
    [[nodiscard]] FormModel* day() const { return day_; }
    [[nodiscard]] PartsModel* pumps() const { return pumps_; }
    [[nodiscard]] PartsModel* banks() const { return banks_; }
    [[nodiscard]] PartsModel* timers() const { return timers_; }

private:
    [[nodiscard]] std::vector<FormField> day_lines();
    [[nodiscard]] std::vector<FormField> pump_lines(std::size_t row);
    [[nodiscard]] std::vector<FormField> more_pump_lines(std::size_t row);
    [[nodiscard]] QStringList pump_results(std::size_t row);
    [[nodiscard]] std::vector<FormField> bank_lines(std::size_t row);
    [[nodiscard]] std::vector<FormField> more_bank_lines(std::size_t row);
    [[nodiscard]] std::vector<FormField> timer_lines(std::size_t row);
    [[nodiscard]] FormField template_line(std::size_t row);
    /// The timer's template as the firm has it now, where that is another than the one chosen here.
    [[nodiscard]] std::optional<SettingTemplate> edited_since(std::size_t row) const;
    [[nodiscard]] QString template_news(std::size_t row) const;
    [[nodiscard]] Result<void> take_over_template(std::size_t row);
    [[nodiscard]] Result<void> keep_or_restore(const House& before);
    /// Of the house, with those that were removed: they can come back.
    [[nodiscard]] Result<std::vector<Visit>> all_visits() const;
    [[nodiscard]] Result<void> refuse_if_timed(const Id& pump, const Id& bank, const std::string& name) const;
    [[nodiscard]] Result<void> refuse_if_measured(const Id& pump, const Id& bank,
                                                  const std::string& name) const;

    VisitRecord& record_;
    FormModel* farm_;
    FormModel* house_;
    FormModel* day_;
    PartsModel* pumps_;
    PartsModel* banks_;
    PartsModel* timers_;
};

/// A house as a new one starts: one pump that feeds one bank, on one timer.
[[nodiscard]] House new_house(Store& store, const Id& farm, const std::string& name);

}  // namespace wetfront::ui
