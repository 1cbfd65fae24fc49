// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/limits_view_model.h"

#include <array>
#include <cmath>

#include "cycle/margins.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

struct Line {
    SettingGroup group;
    std::string_view key;
    Limit limit;
};

constexpr std::array all_lines{
    Line{SettingGroup::when_pads_may_run, "start_temperature", Limit::start_temperature},
    Line{SettingGroup::when_pads_may_run, "coolest_start", Limit::start_band},
    Line{SettingGroup::when_pads_may_run, "warmest_start", Limit::start_band},
    Line{SettingGroup::when_pads_may_run, "older_birds_days", Limit::older_birds},
    Line{SettingGroup::when_pads_may_run, "least_air_speed", Limit::air_speed},
    Line{SettingGroup::when_pads_may_run, "least_cooling", Limit::least_cooling},
    Line{SettingGroup::when_pads_may_run, "hot_outside", Limit::hot_outside},
    Line{SettingGroup::when_pads_may_run, "humidity_step", Limit::humidity_step},
    Line{SettingGroup::when_pads_may_run, "clock_ahead_of_sun", Limit::clock_ahead_of_sun},
    Line{SettingGroup::when_pads_may_run, "clock_step", Limit::clock_step},
    Line{SettingGroup::when_pads_may_run, "night", Limit::night},
    Line{SettingGroup::when_pads_may_run, "dry_face", Limit::dry_face},
    Line{SettingGroup::when_pads_may_run, "longest_dry_down", Limit::longest_dry_down},
    Line{SettingGroup::how_long, "water_margin", Limit::water_margin},
    Line{SettingGroup::how_long, "least_rest", Limit::least_rest},
    Line{SettingGroup::how_long, "drying_share", Limit::drying_share},
    Line{SettingGroup::how_long, "first_period", Limit::periods},
    Line{SettingGroup::how_long, "second_period", Limit::periods},
    Line{SettingGroup::how_it_adapts, "dead_band", Limit::dead_band},
    Line{SettingGroup::how_it_adapts, "house_lag", Limit::house_lag},
    Line{SettingGroup::rinse, "constant_share", Limit::constant_share},
};

template <class Q>
bool same(const Entered<Q>& one, const Entered<Q>& other) {
    return std::abs(any(one.value()).si - any(other.value()).si) <= 1e-9 * std::abs(any(other.value()).si);
}
bool same(double one, double other) {
    return one == other;
}
bool same(TimeOfDay one, TimeOfDay other) {
    return one == other;
}

/// Takes out what is the program's own.
void drop_own(Limits& limits, const Limits& own) {
    each_field(limits, [&](const Field& field, auto& member) {
        record_form_detail::with_field(own, field.key, [&](const Field&, const auto& programs) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(programs)>,
                                         std::remove_cvref_t<decltype(member)>>) {
                if (member && same(*member, *programs)) {
                    member.reset();
                }
            }
        });
    });
}

int changed_in(const Limits& limits) {
    int count = 0;
    each_field(limits, [&](const Field&, const auto& member) { count += member ? 1 : 0; });
    return count;
}

}  // namespace

LimitsViewModel::LimitsViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent}, record_{record}, own_{every_limit()} {
    const auto& formatter = record.context().formatter;
    for (const auto group : {SettingGroup::when_pads_may_run, SettingGroup::how_long,
                             SettingGroup::how_it_adapts, SettingGroup::rinse}) {
        auto* form = new FormModel{formatter, this};
        form->set_fields(lines(group));
        groups_.push_back({formatter.text(label_of(group)), form});
    }
    connect(&record_, &VisitRecord::changed, this, [this] {
        for (const auto& group : groups_) {
            group.form->refresh();
        }
        emit changed();
    });
}

QVariantList LimitsViewModel::groups() const {
    QVariantList list;
    for (const auto& group : groups_) {
        list.append(QVariantMap{{"title", group.title}, {"form", QVariant::fromValue(group.form)}});
    }
    return list;
}

QString LimitsViewModel::summary() const {
    const int count = changed_in(record_.file().farm.limits);
    return count == 0 ? tr("the program's own") : tr("%1 changed").arg(count);
}

QString LimitsViewModel::problem() const {
    const auto margins = margins_of(record_.file().farm);
    return margins ? QString{}
                   : tr("These cannot be used together, so the program's own are: %1")
                         .arg(QString::fromStdString(margins.error().text()));
}

Result<void> LimitsViewModel::keep() {
    auto& farm = record_.farm();
    drop_own(farm.limits, own_);
    WF_TRY(const auto margins, margins_of(farm));
    static_cast<void>(margins);
    return record_.save_farm();
}

std::vector<FormField> LimitsViewModel::lines(SettingGroup group) {
    const auto& formatter = record_.context().formatter;
    std::vector<FormField> all;
    for (const auto& [of, key, limit] : all_lines) {
        if (of != group) {
            continue;
        }
        auto line = form_lines<Limits>([this]() -> Limits& { return record_.farm().limits; }, {key},
                                       [this] { return keep(); })
                        .front();
        const auto own = form_lines<Limits>([this]() -> Limits& { return own_; }, {key},
                                            [] { return Result<void>{boost::outcome_v2::success()}; })
                             .front();
        const auto is_entered = [entry = line.entry] { return !entry().isEmpty(); };
        const auto own_text = [own, &formatter] {
            const auto quantity = own.quantity();
            return quantity ? formatter.text(*quantity) : own.entry();
        };
        line.beside = [is_entered, own_text, limit = limit, &formatter] {
            const auto about = limit_text({}, limit);
            const auto origin = formatter.text(label_of(about.origin));
            const auto source = about.source.empty()
                                    ? origin
                                    : tr("%1: %2").arg(origin, QString::fromStdString(about.source));
            return is_entered()
                       ? tr("Changed for this farm. The program's own is %1 (%2).").arg(own_text(), source)
                       : tr("The program's own (%1).").arg(source);
        };
        line.own = [is_entered, own_text] { return is_entered() ? own_text() : QString{}; };
        line.quantity = [changed = line.quantity, own] {
            const auto quantity = changed();
            return quantity ? quantity : own.quantity();
        };
        line.entry = [changed = line.entry, own] {
            const auto entry = changed();
            return entry.isEmpty() ? own.entry() : entry;
        };
        all.push_back(std::move(line));
    }
    return all;
}

}  // namespace wetfront::ui
