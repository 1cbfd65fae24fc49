// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/day_view_model.h"

#include <QFile>
#include <QFileInfo>
#include <array>

#include "day/day_words.h"
#include "day/design_weather.h"
#include "day/simulate.h"
#include "day/visit_day.h"
#include "day/weather_file.h"
#include "search/cheapest_cycle.h"
#include "viewmodels/carried_file.h"

namespace wetfront::ui {
namespace {

QString failed(const Error& error) {
    return QString::fromStdString(error.text());
}

/// Whole or not at all; a link is no weather file.
Result<std::string> text_of(const QString& file) {
    QFile opened{file};
    if (QFileInfo{file}.isSymLink() || !opened.open(QIODevice::ReadOnly)) {
        return bad_input(file.toStdString(), opened.errorString().toStdString(), "a file that can be read");
    }
    return opened.read(static_cast<qint64>(most_weather_bytes) + 1).toStdString();
}

/// As found and as advised.
using Totals = std::array<DayTotals, 2>;

/// Both plans over all days of the file; any thread.
Result<Totals> season_of(const VisitFile& file, const QString& weather_file,
                         const std::function<bool(double)>& told) {
    const auto advice = advise(file);
    auto day = visit_day(file, advice);
    for (const auto* missing : {&day.missing, &day.found.missing, &day.advised.missing}) {
        if (!missing->empty()) {
            return bad_input("house", "", in_english(missing->front(), UnitSystem::si));
        }
    }
    WF_TRY(const auto text, text_of(weather_file));
    WF_TRY(const auto read, read_weather_file(text, QFileInfo{weather_file}.fileName().toStdString(),
                                              advice.weather.pressure));
    WF_TRY(const auto weather, whole_of(read));
    WF_TRY(day.house->clock_ahead, timers_clock_ahead(file, weather));
    WF_TRY(auto simulator, DaySimulator::of(*day.house, weather, {}));
    DayResult first;
    DayResult second;
    WF_CHECK(simulator.run(*day.found.plans, first, [&](double share) { return told(0.5 * share); }));
    WF_CHECK(
        simulator.run(*day.advised.plans, second, [&](double share) { return told(0.5 + 0.5 * share); }));
    return Totals{first.totals, second.totals};
}

/// Any thread.
Result<std::vector<CheapestCycle>> cheapest_of(const VisitFile& file,
                                               const std::function<bool(double)>& told) {
    const auto advice = advise(file);
    const auto day = visit_day(file, advice);
    for (const auto* missing : {&day.missing, &day.advised.missing}) {
        if (!missing->empty()) {
            return bad_input("house", "", in_english(missing->front(), UnitSystem::si));
        }
    }
    WF_TRY(const auto weather, design_weather_of(file, advice));
    return cheapest_cycles(file, advice, day, weather, [&] { return told(-1.0); });
}

}  // namespace

DayViewModel::DayViewModel(const Formatter& formatter, Source source, Media folders, QObject* parent)
    : BusyViewModel{parent}, formatter_{formatter}, source_{std::move(source)}, folders_{std::move(folders)} {
    soon_.setSingleShot(true);
    soon_.setInterval(0);
    connect(&soon_, &QTimer::timeout, this, &DayViewModel::work_out);
}

void DayViewModel::show() {
    ++in_sight_;
    work_out();
    lookForWeather();
}

void DayViewModel::follow() {
    season_rows_.clear();
    season_words_.clear();
    cheapest_.clear();
    emit seasonChanged();
    emit cheapestChanged();
    if (in_sight_ > 0) {
        soon_.start();
    }
}

void DayViewModel::follow_tried(const std::optional<TimerSettings>& tried) {
    if (tried == tried_) {
        return;
    }
    tried_ = tried;
    if (in_sight_ > 0) {
        soon_.start();
    }
}

void DayViewModel::work_out() {
    const auto file = source_();
    chart_ = file ? day_chart(*file, advise(*file), tried_, formatter_) : DayChart{};
    emit changed();
}

QVariantList DayViewModel::weatherFiles() const {
    QVariantList list;
    for (const auto& file : weather_files_) {
        list.append(QVariantMap{{QStringLiteral("value"), file}, {QStringLiteral("text"), file}});
    }
    return list;
}

void DayViewModel::lookForWeather() {
    weather_files_.clear();
    for (const auto& folder : folders_()) {
        weather_files_ += carried_files(folder, QStringLiteral("*.epw"));
        weather_files_ += carried_files(folder, QStringLiteral("*weather*.csv"));
    }
    emit seasonChanged();
}

void DayViewModel::searchCheapest() {
    const auto file = source_();
    if (busy() || !file) {
        return;
    }
    begin(
        tr("Trying every cycle"), true, [told = told(), file = *file] { return cheapest_of(file, told); },
        [this, house = file->house](const Result<std::vector<CheapestCycle>>& found) {
            cheapest_.clear();
            if (!found) {
                cheapest_.append(tr("Nothing was found. %1").arg(failed(found.error())));
            } else if (found.value().empty()) {
                cheapest_.append(
                    tr("No cycle is advised for a timer of this house, so there is none to better."));
            } else {
                for (const auto& each : found.value()) {
                    cheapest_.append(formatter_.text(words_of(each, house)));
                }
            }
            emit cheapestChanged();
        });
}

void DayViewModel::simulate(const QString& weather_file) {
    const auto file = source_();
    if (busy() || !file) {
        return;
    }
    season_rows_.clear();
    season_words_.clear();
    emit seasonChanged();
    begin(
        tr("Working out the season"), true,
        [told = told(), file = *file, weather_file] { return season_of(file, weather_file, told); },
        [this, currency = file->farm.currency](const Result<Totals>& totals) {
            if (totals) {
                const auto words = compared(totals.value(), currency);
                season_rows_ = day_rows(words.rows, formatter_);
                season_words_ = formatter_.text(words.sentence);
            } else {
                season_words_ = tr("No season was worked out. %1").arg(failed(totals.error()));
            }
            emit seasonChanged();
        });
}

}  // namespace wetfront::ui
