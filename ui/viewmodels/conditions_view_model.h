// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <map>

#include "viewmodels/air_picture.h"
#include "viewmodels/parts_model.h"
#include "viewmodels/record_form.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The step Conditions: weather and air, what was measured at each bank and each pump, water.
class ConditionsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(wetfront::ui::FormModel* air READ air CONSTANT)
    Q_PROPERTY(wetfront::ui::PartsModel* atBanks READ atBanks CONSTANT)  ///< all in their second forms
    Q_PROPERTY(wetfront::ui::PartsModel* flows READ flows CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* water READ water CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* instruments READ instruments CONSTANT)
    Q_PROPERTY(QVariantMap airPicture READ airPicture NOTIFY changed)
    Q_PROPERTY(QStringList airWords READ airWords NOTIFY changed)

public:
    ConditionsViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] FormModel* air() const { return air_; }
    [[nodiscard]] PartsModel* atBanks() const { return banks_; }
    [[nodiscard]] PartsModel* flows() const { return flows_; }
    [[nodiscard]] FormModel* water() const { return water_; }
    [[nodiscard]] FormModel* instruments() const { return instruments_; }
    [[nodiscard]] QVariantMap airPicture() const { return air_view(record_).picture; }
    [[nodiscard]] QStringList airWords() const { return air_view(record_).words; }

signals:
    void changed();

private:
    [[nodiscard]] ListedItem<PumpFlow>& flow_of(std::size_t pump);
    [[nodiscard]] ListedItem<BankConditions>& at_bank(std::size_t bank);
    [[nodiscard]] std::vector<FormField> flow_lines(std::size_t pump,
                                                    const std::vector<std::string_view>& keys);
    [[nodiscard]] std::vector<FormField> bank_lines(std::size_t bank);
    [[nodiscard]] QStringList flow_results(std::size_t pump);
    [[nodiscard]] QStringList bank_results(std::size_t bank);

    VisitRecord& record_;
    std::map<std::string, ListedItem<PumpFlow>> measured_;
    std::map<std::string, ListedItem<BankConditions>> at_banks_;
    FormModel* air_;
    PartsModel* banks_;
    PartsModel* flows_;
    FormModel* water_;
    FormModel* instruments_;
};

}  // namespace wetfront::ui
