// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/history_view_model.h"

#include <QVariantMap>

#include "store/house_visits.h"

namespace wetfront::ui {

HistoryViewModel::HistoryViewModel(const Context& context, QObject* parent)
    : QObject{parent}, context_{context} {}

Result<void> HistoryViewModel::show(const House& house) {
    banks_ = house.banks;
    followed_.clear();
    const auto read = [&]() -> Result<std::vector<FollowedTrend>> {
        WF_TRY(const auto visits, visit_files_of(context_.store, house.id));
        return trends_of(visits);
    };
    auto trends = read();
    if (trends) {
        followed_ = std::move(trends).value();
    }
    emit changed();
    return trends ? Result<void>{boost::outcome_v2::success()} : Result<void>{trends.error()};
}

QString HistoryViewModel::values_of(const BankSeries& series) const {
    const auto& formatter = context_.formatter;
    const auto on_day = [&](const VisitValue& each) {
        return each.expanded ? tr("%1 ± %2 on %3")
                                   .arg(formatter.text(each.value), formatter.text(*each.expanded),
                                        formatter.date(each.at))
                             : tr("%1 on %2").arg(formatter.text(each.value), formatter.date(each.at));
    };
    const auto& values = series.values;
    return values.size() == 1 ? on_day(values.front())
                              : tr("first %1, last %2").arg(on_day(values.front()), on_day(values.back()));
}

QVariantList HistoryViewModel::banks() const {
    QVariantList list;
    for (const auto& bank : banks_) {
        QVariantList series;
        for (const auto& each : followed_) {
            if (each.series.bank == bank.id) {
                const auto shift = shift_words(each);
                series.append(
                    QVariantMap{{"words", context_.formatter.text(words_of(each))},
                                {"shift", shift.empty() ? QString{} : context_.formatter.text(shift)},
                                {"values", values_of(each.series)}});
            }
        }
        if (!series.isEmpty()) {
            const auto cause = likely_cause(followed_, bank.id);
            list.append(QVariantMap{{"name", QString::fromStdString(bank.name)},
                                    {"cause", cause.empty() ? QString{} : context_.formatter.text(cause)},
                                    {"series", series}});
        }
    }
    return list;
}

}  // namespace wetfront::ui
