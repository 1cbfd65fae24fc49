// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheets_view_model.h"

#include <QDate>
#include <QDir>
#include <algorithm>

#include "viewmodels/stick.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t most_farms_in_sight = 24;
constexpr qsizetype most_missing_told = 20;

constexpr QLatin1String this_season{"season"};
constexpr QLatin1String last_season{"last_season"};
constexpr QLatin1String twelve_months{"year"};
constexpr QLatin1String all_days{"all"};

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace

SheetsViewModel::SheetsViewModel(const Context& context, const SheetPaper& paper, QObject* parent)
    : QObject{parent},
      context_{context},
      paper_{paper},
      look_{paper, context.formatter},
      batch_{context, paper, nullptr} {
    connect(&batch_, &SheetBatch::progressed, this, &SheetsViewModel::busyChanged);
    connect(&batch_, &SheetBatch::ended, this, &SheetsViewModel::end);
}

void SheetsViewModel::offer(const std::vector<HouseSummary>& all, const std::optional<Id>& house,
                            std::vector<Id> listed) {
    places_.clear();
    place_ = 0;
    std::vector<Place> farms;
    std::vector<Id> farm_ids;
    Place every{tr("All houses"), {}};
    for (const auto& each : all) {  // farm by farm
        if (farm_ids.empty() || farm_ids.back() != each.farm) {
            farm_ids.push_back(each.farm);
            farms.push_back({tr("Farm %1").arg(qstring(each.farm_name)), {}});
        }
        farms.back().houses.push_back(each.house);
        every.houses.push_back(each.house);
        if (each.house == house) {
            places_.push_back({qstring(each.house_name), {each.house}});
        }
    }
    const auto is_wanted = [&](std::size_t farm) {
        return house ? std::ranges::find(farms[farm].houses, *house) != farms[farm].houses.end()
                     : farms.size() > 1 && farms.size() <= most_farms_in_sight;
    };
    if (!house && listed.size() < all.size()) {
        places_.push_back({tr("Houses in the list: %1").arg(listed.size()), std::move(listed)});
    }
    for (std::size_t farm = 0; farm < farms.size(); ++farm) {
        if (is_wanted(farm)) {
            places_.push_back(std::move(farms[farm]));
        }
    }
    places_.push_back(std::move(every));
    tell({}, {});
    look();
    emit chosenChanged();
}

QVariantList SheetsViewModel::places() const {
    QVariantList list;
    for (const auto& place : places_) {
        list.append(QVariantMap{{"value", static_cast<int>(list.size())}, {"text", place.text}});
    }
    return list;
}

void SheetsViewModel::setPlace(int place) {
    place_ = place;
    emit chosenChanged();
}

// A hot season of the northern half of the earth, and the work before it, lie within one calendar year.
QVariantList SheetsViewModel::spans() const {
    const auto year = qstring(local_date(context_.clock.wall_now())).left(4).toInt();
    const auto option = [](QLatin1String value, const QString& text) {
        return QVariantMap{{"value", QString{value}}, {"text", text}};
    };
    return {option(this_season, tr("This season, %1").arg(year)),
            option(last_season, tr("Last season, %1").arg(year - 1)),
            option(twelve_months, tr("Last 12 months")), option(all_days, tr("All days"))};
}

void SheetsViewModel::setSpan(const QString& span) {
    span_ = span;
    emit chosenChanged();
}

QString SheetsViewModel::visits() const {
    const auto name = enum_name(visits_);
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

void SheetsViewModel::setVisits(const QString& visits) {
    visits_ = enum_value<SheetVisits>(visits.toStdString()).value_or(SheetVisits::every_signed);
    emit chosenChanged();
}

void SheetsViewModel::setSummaries(bool summaries) {
    kind_ = summaries ? SheetKind::summary : SheetKind::commissioning;
    emit chosenChanged();
}

void SheetsViewModel::setLanguage(const QString& code) {
    look_.set_language(code);
    emit chosenChanged();
}
void SheetsViewModel::setUnits(const QString& name) {
    look_.set_units(name);
    emit chosenChanged();
}
void SheetsViewModel::setPaper(const QString& name) {
    look_.set_paper(name);
    emit chosenChanged();
}

void SheetsViewModel::look() {
    media_ = paper_.media();
    emit mediaChanged();
}

SheetChoice SheetsViewModel::choice() const {
    SheetChoice choice{visits_};
    const QDate today = QDate::fromString(qstring(local_date(context_.clock.wall_now())), Qt::ISODate);
    const auto day = [](const QDate& date) { return date.toString(Qt::ISODate).toStdString(); };
    if (span_ == this_season) {
        choice.from = day({today.year(), 1, 1});
    } else if (span_ == last_season) {
        choice.from = day({today.year() - 1, 1, 1});
        choice.until = day({today.year() - 1, 12, 31});
    } else if (span_ == twelve_months) {
        choice.from = day(today.addYears(-1));
    }
    return choice;
}

void SheetsViewModel::tell(const QString& outcome, const QString& problem, const QStringList& missing) {
    outcome_ = outcome;
    problem_ = problem;
    missing_ = missing;
    emit outcomeChanged();
}

void SheetsViewModel::begin(const QString& folder) {
    where_ = folder;
    tell({}, {});
    const auto& place = places_.at(static_cast<std::size_t>(place_));
    batch_.begin({place.houses, choice(), kind_, look_.reader(), look_.size(), folder});
    emit busyChanged();
}

void SheetsViewModel::writeTo(const QString& medium) {
    if (busy()) {
        return;
    }
    auto failed = pulled_out(paper_, medium);
    if (!failed) {
        failed = keep_folder(sheets_folder_on(medium).toStdString());
    }
    if (failed) {
        tell({}, stick_words(*failed, medium));
        look();
        return;
    }
    medium_ = medium;
    begin(sheets_folder_on(medium));
}

void SheetsViewModel::writeToFolder() {
    if (busy()) {
        return;
    }
    if (!QDir{}.mkpath(paper_.folder)) {
        tell({}, tr("The folder %1 cannot be made. Nothing is lost; choose another place for documents.")
                     .arg(paper_.folder));
        return;
    }
    begin(paper_.folder);
}

void SheetsViewModel::print() {
    if (busy()) {
        return;
    }
    printer_ = paper_.ask_printer();
    if (!printer_) {
        tell(tr("Not printed."), {});
        return;
    }
    to_print_ = std::make_unique<QTemporaryDir>();
    if (!to_print_->isValid()) {
        printer_.reset();
        tell({}, tr("There is no room to make the sheets: %1").arg(to_print_->errorString()));
        return;
    }
    begin(to_print_->path());
}

void SheetsViewModel::stop() {
    batch_.stop();
}

QString SheetsViewModel::busyText() const {
    if (handing_over_) {
        return tr("Handing over to the printer: %1").arg(batch_.files().size());
    }
    if (batch_.houses_left() > 0) {
        return tr("Looking for visits. Houses still to look into: %1").arg(batch_.houses_left());
    }
    return tr("Sheets made: %1 of %2").arg(QString::number(batch_.done()), QString::number(batch_.chosen()));
}

double SheetsViewModel::progress() const {
    return handing_over_ || batch_.houses_left() > 0 || batch_.chosen() == 0
               ? -1.0
               : static_cast<double>(batch_.done()) / batch_.chosen();
}

QString SheetsViewModel::counted(const QString& what) const {
    return what.arg(QString::number(batch_.files().size()), QString::number(batch_.chosen()), where_);
}

QStringList SheetsViewModel::missing_words() const {
    QStringList words;
    for (const auto& [visit, why] : batch_.missing()) {
        if (words.size() == most_missing_told) {
            words.append(tr("And %1 more.").arg(batch_.missing().size() - most_missing_told));
            break;
        }
        words.append(tr("No sheet of visit %1. %2").arg(visit, why));
    }
    return words;
}

void SheetsViewModel::end() {
    auto failure = batch_.failure();
    if (!failure && !medium_.isEmpty()) {
        failure = pulled_out(paper_, medium_);
    }
    const QString place = medium_.isEmpty() ? where_ : medium_;
    medium_.clear();
    if (printer_ && !failure && !batch_.stopped() && !batch_.files().isEmpty()) {
        hand_over();
        return;
    }
    const bool printing = printer_.has_value();
    printer_.reset();
    to_print_.reset();
    const QStringList missing = missing_words();
    if (failure) {
        tell(printing ? tr("Nothing was printed.") : counted(tr("Whole before that: %1 of %2, in %3")),
             stick_words(*failure, place), missing);
    } else if (batch_.stopped()) {
        tell(printing ? tr("Stopped. Nothing was printed.")
                      : counted(tr("Stopped. Whole and read back: %1 of %2, in %3")),
             {}, missing);
    } else if (batch_.chosen() == 0) {
        tell(tr("There is no such visit."), {}, missing);
    } else {
        tell(printing ? tr("Nothing was printed.") : counted(tr("Written and read back: %1 of %2, in %3")),
             {}, missing);
    }
    emit busyChanged();
}

void SheetsViewModel::hand_over() {
    handing_over_ = true;
    emit busyChanged();
    const auto work = [print = *printer_, files = batch_.files()] { return print(files); };
    worker_.run(work, [this](const Result<void>& printed) {
        handing_over_ = false;
        printer_.reset();
        to_print_.reset();
        if (printed) {
            tell(tr("Sent to the printer as one job: %1 of %2")
                     .arg(QString::number(batch_.files().size()), QString::number(batch_.chosen())),
                 {}, missing_words());
        } else {
            tell({}, qstring(printed.error().text()), missing_words());
        }
        emit busyChanged();
    });
}

}  // namespace wetfront::ui
