// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>

#include "viewmodels/form_model.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The margins and limits of the advice for the visit's farm: each with its value, its source and a way back
/// to the program's own. Only what differs from that is kept with the farm.
class LimitsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QVariantList groups READ groups CONSTANT)     ///< {title, form}, in the order of the questions
    Q_PROPERTY(QString summary READ summary NOTIFY changed)  ///< "2 changed"
    Q_PROPERTY(QString problem READ problem NOTIFY changed)  ///< why those kept cannot be used together

public:
    LimitsViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] QVariantList groups() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString problem() const;

signals:
    void changed();

private:
    struct Group {
        QString title;
        FormModel* form;
    };
    [[nodiscard]] std::vector<FormField> lines(SettingGroup group);
    [[nodiscard]] Result<void> keep();

    VisitRecord& record_;
    Limits own_;
    std::vector<Group> groups_;
};

}  // namespace wetfront::ui
