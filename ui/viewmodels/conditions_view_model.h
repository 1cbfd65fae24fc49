// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "viewmodels/form_model.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The step Conditions: weather and air, flow of each pump, water.
class ConditionsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(wetfront::ui::FormModel* air READ air CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* flows READ flows CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* water READ water CONSTANT)

public:
    ConditionsViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] FormModel* air() const { return air_; }
    [[nodiscard]] FormModel* flows() const { return flows_; }
    [[nodiscard]] FormModel* water() const { return water_; }

private:
    void build_flows();
    [[nodiscard]] PumpFlow& flow_of(const Id& pump);

    VisitRecord& record_;
    FormModel* air_;
    FormModel* flows_;
    FormModel* water_;
};

}  // namespace wetfront::ui
