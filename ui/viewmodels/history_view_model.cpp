// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/history_view_model.h"

#include <QVariantMap>
#include <algorithm>
#include <array>
#include <string_view>

#include "store/house_visits.h"
#include "viewmodels/caution_maps.h"
#include "viewmodels/house_sieve.h"

namespace wetfront::ui {
namespace {

/// Of those who clean, flush and mend what a trend points to.
constexpr std::array work_cautions{
    std::string_view{"unexpected-start"},      std::string_view{"electricity-and-water"},
    std::string_view{"birds-without-cooling"}, std::string_view{"bleach-and-acid"},
    std::string_view{"bacteria-in-sump"},      std::string_view{"ladder"}};

QString name_of(Followed what) {
    const auto name = enum_name(what);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

}  // namespace

HistoryViewModel::HistoryViewModel(const Context& context, QObject* parent)
    : QObject{parent}, context_{context} {
    next_.setSingleShot(true);
    next_.setInterval(0);
    connect(&next_, &QTimer::timeout, this, &HistoryViewModel::read_next);
}

Result<void> HistoryViewModel::show(const House& house) {
    house_ = house;
    followed_.clear();
    timers_.clear();
    next_visit_.reset();
    neighbours_ = 0;
    compared_.clear();
    stopComparing();
    const auto read = [&]() -> Result<void> {
        WF_TRY(const auto visits, visit_files_of(context_.store, house.id));
        WF_TRY(followed_, trends_of(house, visits));
        timers_ = settings_over_visits(house, visits);
        if (!visits.empty()) {
            next_visit_ = next_visit(visits.front(), std::ranges::any_of(followed_, gets_worse));
        }
        WF_TRY(const auto houses, context_.store.houses());
        neighbours_ = static_cast<int>(std::ranges::count(houses, house.farm, &HouseSummary::farm));
        return boost::outcome_v2::success();
    };
    auto done = read();
    emit changed();
    return done;
}

QString HistoryViewModel::nextVisit() const {
    return next_visit_ ? tr("Next visit by %1: %2.")
                             .arg(context_.formatter.date(next_visit_->due),
                                  context_.formatter.text(next_visit_->why))
                       : QString{};
}

QString HistoryViewModel::values_of(const BankSeries& series) const {
    const auto on_day = [&](const VisitValue& each) {
        return tr("%1 on %2").arg(value_text(context_.formatter, each), context_.formatter.date(each.at));
    };
    const auto& values = series.values;
    return values.size() == 1 ? on_day(values.front())
                              : tr("first %1, last %2").arg(on_day(values.front()), on_day(values.back()));
}

QVariantList HistoryViewModel::banks() const {
    const auto& formatter = context_.formatter;
    const auto said = [&](const Message& words) { return words.empty() ? QString{} : formatter.text(words); };
    QVariantList list;
    for (const auto& bank : house_.banks) {
        QVariantList series;
        for (std::size_t i = 0; i < followed_.size(); ++i) {
            const auto& each = followed_[i];
            if (each.series.bank == bank.id) {
                series.append(QVariantMap{{"words", said(words_of(each))},
                                          {"shift", said(shift_words(each))},
                                          {"limit", said(limit_words(each))},
                                          {"values", values_of(each.series)},
                                          {"index", static_cast<int>(i)},
                                          {"worse", gets_worse(each)}});
            }
        }
        if (!series.isEmpty()) {
            const auto cause = likely_cause(followed_, bank.id);
            list.append(QVariantMap{{"name", QString::fromStdString(bank.name)},
                                    {"cause", cause ? said(words_of(*cause)) : QString{}},
                                    {"remedy", cause ? said(remedy_of(*cause)) : QString{}},
                                    {"series", series}});
        }
    }
    return list;
}

int HistoryViewModel::first() const {
    const auto index_of = [&](const auto& wanted) {
        const auto found = std::ranges::find_if(followed_, wanted);
        return found == followed_.end() ? -1 : static_cast<int>(found - followed_.begin());
    };
    const auto is_through = [](const FollowedTrend& each) {
        return each.series.what == Followed::wet_through;
    };
    const int worse_through =
        index_of([&](const FollowedTrend& each) { return is_through(each) && gets_worse(each); });
    const int worse = worse_through >= 0 ? worse_through : index_of(gets_worse);
    const int through = worse >= 0 ? worse : index_of(is_through);
    return through >= 0 || followed_.empty() ? through : 0;
}

QVariantList HistoryViewModel::cautions() const {
    const bool work_is_advised = std::ranges::any_of(
        house_.banks, [&](const PadBank& bank) { return likely_cause(followed_, bank.id).has_value(); });
    std::vector<const Caution*> wanted;
    for (const auto& caution : wetfront::cautions()) {
        if (work_is_advised && std::ranges::find(work_cautions, caution.id) != work_cautions.end()) {
            wanted.push_back(&caution);
        }
    }
    return caution_maps(wanted, context_.formatter);
}

QString HistoryViewModel::codesComeFirst() const {
    return context_.formatter.text(codes_come_first());
}

QVariantList HistoryViewModel::timers() const {
    QVariantList list;
    for (std::size_t i = 0; i < timers_.size(); ++i) {
        const auto* timer = house_.timer(timers_[i].timer);
        const auto changed = std::ranges::count_if(timers_[i].stands, [](const SettingsStand& stand) {
            return !stand.by_visit.empty() || !stand.meanwhile.empty();
        });
        list.append(QVariantMap{
            {"name", QString::fromStdString(timer->name)},
            {"summary", tr("visits: %1, with changes: %2")
                            .arg(QString::number(timers_[i].stands.size()), QString::number(changed))},
            {"index", static_cast<int>(i)}});
    }
    return list;
}

QVariantMap HistoryViewModel::chart(int index) const {
    return index >= 0 && index < static_cast<int>(followed_.size())
               ? series_chart(context_.formatter, followed_[static_cast<std::size_t>(index)])
               : QVariantMap{};
}

QVariantMap HistoryViewModel::settingsChart(int index) const {
    return index >= 0 && index < static_cast<int>(timers_.size())
               ? settings_chart(context_.formatter, timers_[static_cast<std::size_t>(index)])
               : QVariantMap{};
}

void HistoryViewModel::compare() {
    compared_.clear();
    to_compare_.clear();
    if (const auto houses = context_.store.houses()) {
        for (const auto& house : houses.value()) {
            if (house.farm == house_.farm) {
                to_compare_.push_back(house.house);
            }
        }
    }
    next_.start();
    emit comparedChanged();
}

void HistoryViewModel::stopComparing() {
    next_.stop();
    to_compare_.clear();
    emit comparedChanged();
}

void HistoryViewModel::read_next() {
    if (to_compare_.empty()) {
        return;
    }
    const auto house = context_.store.house(to_compare_.front());
    const auto visits = visit_files_of(context_.store, to_compare_.front());
    to_compare_.pop_front();
    // A house that cannot be read tells so where it is opened; the others are compared all the same.
    if (house && visits) {
        compared_.push_back({house.value(), history_of(house.value(), visits.value())});
    }
    if (!to_compare_.empty()) {
        next_.start();
    }
    emit comparedChanged();
}

QString HistoryViewModel::comparing() const {
    return to_compare_.empty()
               ? QString{}
               : tr("houses read: %1, still to read: %2")
                     .arg(QString::number(compared_.size()), QString::number(to_compare_.size()));
}

QVariantList HistoryViewModel::comparable() const {
    QVariantList list;
    for (const auto& [what, name] : EnumNames<Followed>::all) {
        const bool somewhere = std::ranges::any_of(compared_, [&, what = what](const Compared& house) {
            return std::ranges::any_of(house.series,
                                       [what](const BankSeries& series) { return series.what == what; });
        });
        if (somewhere) {
            list.append(
                QVariantMap{{"value", name_of(what)}, {"text", context_.formatter.text(label_of(what))}});
        }
    }
    return list;
}

QVariantMap HistoryViewModel::comparison(const QString& followed) const {
    const auto what = enum_value<Followed>(followed.toStdString());
    std::vector<NamedSeries> all;
    for (const auto& [house, series] : compared_) {
        for (const auto& each : series) {
            const auto* bank = house.bank(each.bank);
            if (what && each.what == *what && bank != nullptr) {
                all.push_back(
                    {tr("%1, %2").arg(QString::fromStdString(house.name), QString::fromStdString(bank->name)),
                     each});
            }
        }
    }
    return comparison_chart(context_.formatter, all);
}

}  // namespace wetfront::ui
