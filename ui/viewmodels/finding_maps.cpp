// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/finding_maps.h"

#include <QCoreApplication>
#include <QStringList>

namespace wetfront::ui {
namespace {

class FindingMapsWords {
    Q_DECLARE_TR_FUNCTIONS(FindingMapsWords)
};

}  // namespace

QVariantList finding_maps(const std::vector<Finding>& findings, const House& house, const Id& timer,
                          FindingsOf which, const Formatter& formatter) {
    QVariantList list;
    for (const auto& finding : findings) {
        if (finding.timer != timer && !(finding.timer.empty() && which == FindingsOf::timer_and_house)) {
            continue;
        }
        const auto* bank = house.bank(finding.bank);
        QString message = formatter.text(finding.message);
        const auto bank_name = bank != nullptr ? QString::fromStdString(bank->name) : QString{};
        if (house.banks.size() > 1 && !message.contains(bank_name)) {
            message = FindingMapsWords::tr("%1: %2").arg(bank_name, message);
        }
        QStringList causes;
        for (const auto& likely : finding.causes) {
            causes.append(FindingMapsWords::tr("%1 Look: %2")
                              .arg(formatter.text(likely.cause), formatter.text(likely.next_check)));
        }
        const auto severity = name_of(finding.severity);
        list.append(QVariantMap{{"severity", QString::fromUtf8(severity.data(), qsizetype(severity.size()))},
                                {"message", message},
                                {"remedy", formatter.text(finding.remedy)},
                                {"source", QString::fromStdString(finding.source)},
                                {"causes", causes}});
    }
    return list;
}

}  // namespace wetfront::ui
