// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/bundles_view_model.h"

#include <algorithm>
#include <system_error>

namespace wetfront::ui {
namespace {

constexpr const char* bundle_ending = ".bundle";
constexpr const char* receipt_ending = ".receipt";

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

std::filesystem::path folder_on(const QString& medium) {
    return std::filesystem::path{medium.toStdString()} / "Wetfront bundles";
}

/// "everything", "house:<id>", "farm:<id>", "new:<id of a device>"
BundleChoice choice_of(const QString& what) {
    const Id id{what.section(QLatin1Char{':'}, 1).toStdString()};
    BundleChoice choice;
    choice.sheets = true;
    if (what.startsWith(QStringLiteral("farm:"))) {
        choice.farms = {id};
    } else if (what.startsWith(QStringLiteral("house:"))) {
        choice.houses = {id};
    } else if (what.startsWith(QStringLiteral("new:"))) {
        choice.new_for = id;
    } else {
        choice.everything = true;
    }
    return choice;
}

/// A name that is not taken, which tells when and by which machine, and nothing of the records.
std::filesystem::path new_file_in(const std::filesystem::path& folder, const Id& device, WallTime now) {
    auto clock = local_clock(now);
    std::erase(clock, ':');
    const auto begin = "records-" + local_date(now) + "-" + clock + "-" +
                       device.text.substr(device.text.size() - std::min<std::size_t>(device.text.size(), 6));
    auto file = folder / (begin + bundle_ending);
    std::error_code none;
    for (int number = 2; std::filesystem::exists(file, none); ++number) {
        file = folder / (begin + "-" + std::to_string(number) + bundle_ending);
    }
    return file;
}

Result<BundleMade> write_into(const Store& store, const std::filesystem::path& folder,
                              const BundleChoice& choice, WallTime now) {
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    if (problem) {
        return storage_error(folder.string(), problem.message(), "use another stick");
    }
    return store.write_bundle(choice, new_file_in(folder, store.device(), now));
}

}  // namespace

BundlesViewModel::BundlesViewModel(const Context& context, Media media, QObject* parent)
    : BusyViewModel{parent}, context_{context}, find_media_{std::move(media)} {}

void BundlesViewModel::set_outcome(const QString& outcome) {
    outcome_ = outcome;
    emit outcomeChanged();
}

QVariantList BundlesViewModel::outgoing() const {
    QVariantList list;
    if (!house_.id.empty()) {
        list.append(QVariantMap{{"value", QStringLiteral("house:") + qstring(house_.id.text)},
                                {"text", qstring(house_.name)}});
    }
    list.append(QVariantMap{{"value", QStringLiteral("everything")}, {"text", tr("All records")}});
    if (const auto devices = context_.store.other_devices()) {
        for (const auto& device : devices.value()) {
            list.append(QVariantMap{{"value", QStringLiteral("new:") + qstring(device.id.text)},
                                    {"text", tr("What is new for machine %1").arg(qstring(device.name))}});
        }
    }
    if (const auto farms = context_.store.farms()) {
        for (const auto& farm : farms.value()) {
            list.append(QVariantMap{{"value", QStringLiteral("farm:") + qstring(farm.id.text)},
                                    {"text", qstring(farm.name)}});
        }
    }
    return list;
}

QVariantList BundlesViewModel::incoming() const {
    QVariantList list;
    for (const auto& each : incoming_) {
        list.append(QVariantMap{{"file", qstring(each.file.string())},
                                {"title", qstring(each.file.filename().string())},
                                {"place", each.place},
                                {"isReceipt", each.is_receipt}});
    }
    return list;
}

QString BundlesViewModel::name_of(const SplitRecord& record) const {
    const QString name = qstring(record.name);
    switch (record.kind) {
        case RecordKind::farm:
            return tr("Farm: %1").arg(name);
        case RecordKind::house:
            return tr("House: %1").arg(name);
        case RecordKind::visit:
            return tr("A visit of %1").arg(name);
        case RecordKind::setting_template:
            return tr("Setting template %1").arg(name);
    }
    return {};
}

std::vector<TwoStates> BundlesViewModel::differences_of(const SplitRecord& record) const {
    const auto& store = context_.store;
    const auto places_of = [&](const auto& present) {
        return present ? changed_places(present.value(), record.differences) : ChangedPlaces{};
    };
    switch (record.kind) {
        case RecordKind::farm:
            return state_words(House{}, places_of(store.farm(record.record)));
        case RecordKind::house: {
            const auto house = store.house(record.record);
            return state_words(house ? house.value() : House{}, places_of(house));
        }
        case RecordKind::visit: {
            const auto visit = store.visit(record.record);
            const auto house = visit ? store.house(visit.value().house) : Result<House>{House{}};
            return state_words(house ? house.value() : House{}, places_of(visit));
        }
        case RecordKind::setting_template:
            break;  // no page tells its places
    }
    return {};
}

QVariantList BundlesViewModel::split() const {
    QVariantList list;
    for (const auto& record : split_) {
        QVariantList states;
        for (const auto& state : record.states) {
            const QString when = context_.formatter.date_and_time(state.entered_at);
            states.append(QVariantMap{
                {"revision", qstring(state.revision)},
                {"text", state.is_signed ? tr("entered %1, signed").arg(when) : tr("entered %1").arg(when)}});
        }
        QVariantList differences;
        for (const auto& place : differences_of(record)) {
            differences.append(QVariantMap{{"place", context_.formatter.text(place.place)},
                                           {"first", context_.formatter.text(place.first)},
                                           {"second", context_.formatter.text(place.second)}});
        }
        list.append(
            QVariantMap{{"title", name_of(record)}, {"states", states}, {"differences", differences}});
    }
    return list;
}

QString BundlesViewModel::aside() const {
    return aside_.empty() ? QString{}
                          : tr("Entries kept aside, unharmed: %1. They wait for other bundles, or a later "
                               "version of this program made them; each bundle from here passes them on.")
                                .arg(QString::number(aside_.size()));
}

void BundlesViewModel::begin_anew(const House& house) {
    house_ = house;
    drop();
    set_outcome({});
    look();
}

void BundlesViewModel::look() {
    media_ = find_media_();
    incoming_.clear();
    for (const auto& medium : media_) {
        std::error_code none;
        for (const auto& each : std::filesystem::directory_iterator{folder_on(medium), none}) {
            const auto ending = each.path().extension();
            if (each.is_regular_file(none) && !each.is_symlink(none) &&
                (ending == bundle_ending || ending == receipt_ending)) {
                incoming_.push_back({each.path(), tr("on %1").arg(medium), ending == receipt_ending});
            }
        }
    }
    std::ranges::sort(incoming_, std::ranges::greater{},
                      [](const Incoming& each) { return each.file.filename(); });
    const auto split = context_.store.split_records();
    const auto aside = context_.store.kept_aside();
    split_ = split ? split.value() : std::vector<SplitRecord>{};
    aside_ = aside ? aside.value() : std::vector<KeptAside>{};
    if (!split || !aside) {
        set_outcome(qstring(split ? aside.error().text() : split.error().text()));
    }
    emit changed();
}

void BundlesViewModel::writeTo(const QString& medium, const QString& what) {
    if (busy()) {
        return;
    }
    drop();
    set_outcome({});
    const auto work = [this, folder = folder_on(medium), choice = choice_of(what),
                       now = context_.clock.wall_now()] {
        return write_into(context_.store, folder, choice, now);
    };
    begin(tr("Writing to %1").arg(medium), false, work, [this](const Result<BundleMade>& made) {
        look();
        set_outcome(
            !made ? tr("No bundle was written. %1").arg(qstring(made.error().text()))
            : made.value().entries == 0
                ? tr("Nothing is new for that machine: no bundle was written.")
                : tr("Written and read back: %1. Entries: %2. It counts as delivered once its "
                     "receipt is read here.")
                      .arg(qstring(made.value().file.string()), QString::number(made.value().entries)));
    });
}

QStringList BundlesViewModel::lines_of(const BundleReport& report) const {
    const auto number = [](auto count) { return QString::number(count); };
    QStringList lines{tr("Made on %1").arg(context_.formatter.date_and_time(report.made)),
                      tr("New entries: %1; farms %2, houses %3, visits %4, templates %5, marks %6")
                          .arg(number(report.added), number(report.farms), number(report.houses),
                               number(report.visits), number(report.templates), number(report.marks)),
                      tr("Entries there already: %1").arg(number(report.there))};
    if (!report.aside.empty()) {
        lines.append(tr("Entries kept aside, because something they need is not here yet or a later version "
                        "made them: %1")
                         .arg(number(report.aside.size())));
    }
    if (report.taken_in_later > 0) {
        lines.append(
            tr("Entries kept aside earlier and in their place now: %1").arg(number(report.taken_in_later)));
    }
    for (const auto& record : report.split) {
        lines.append(tr("Changed on two machines, both are kept: %1").arg(name_of(record)));
    }
    return lines;
}

void BundlesViewModel::lookAt(const QString& file) {
    const auto found = std::ranges::find_if(
        incoming_, [&](const Incoming& each) { return qstring(each.file.string()) == file; });
    if (busy() || found == incoming_.end()) {
        return;
    }
    drop();
    set_outcome({});
    if (found->is_receipt) {
        read_receipt(found->file);
        return;
    }
    const auto work = [this, path = found->file]() -> Result<BundleReport> {
        WF_TRY(const auto text, read_bundle_file(path));
        return context_.store.preview_bundle(text);
    };
    begin(tr("Reading the bundle"), false, work,
          [this, path = found->file](const Result<BundleReport>& report) {
              if (!report) {
                  set_outcome(tr("This bundle cannot be used, and nothing was changed. %1")
                                  .arg(qstring(report.error().text())));
                  return;
              }
              looked_at_ = path;
              looked_ = {{"title", qstring(path.filename().string())}, {"lines", lines_of(report.value())}};
              emit outcomeChanged();
          });
}

void BundlesViewModel::read_receipt(const std::filesystem::path& file) {
    const auto work = [this, file]() -> Result<ReceiptRead> {
        WF_TRY(const auto text, read_bundle_file(file));
        return context_.store.read_receipt(text);
    };
    begin(tr("Reading the receipt"), false, work, [this](const Result<ReceiptRead>& read) {
        look();
        set_outcome(
            read ? tr("Entries delivered: %1, newly: %2.")
                       .arg(QString::number(read.value().entries), QString::number(read.value().marked))
                 : tr("This receipt cannot be used. %1").arg(qstring(read.error().text())));
    });
}

void BundlesViewModel::takeIn() {
    if (busy() || looked_at_.empty()) {
        return;
    }
    const auto work = [this, path = looked_at_] {
        auto text = read_bundle_file(path);
        Taken taken{text ? context_.store.take_in(text.value()) : Result<BundleReport>{text.error()},
                    boost::outcome_v2::success()};
        if (taken.report) {
            taken.receipt = context_.store.write_receipt(text.value(), path.string() + receipt_ending);
        }
        return taken;
    };
    drop();
    begin(tr("Taking in the records"), false, work, [this](const Taken& taken) {
        look();
        if (!taken.report) {
            set_outcome(tr("Nothing was taken in. %1").arg(qstring(taken.report.error().text())));
            return;
        }
        const QString done = lines_of(taken.report.value()).mid(1).join(QLatin1Char{'\n'});
        set_outcome(done + QLatin1Char{'\n'} +
                    (taken.receipt
                         ? tr("The receipt for the sender is beside the bundle: bring the stick back.")
                         : tr("The receipt could not be written: %1 Take the bundle in once more to get one.")
                               .arg(qstring(taken.receipt.error().text()))));
        emit recordsChanged();
    });
}

void BundlesViewModel::drop() {
    looked_.clear();
    looked_at_.clear();
    emit outcomeChanged();
}

void BundlesViewModel::choose(const QString& revision) {
    if (busy()) {
        return;
    }
    const auto chosen = context_.store.choose_state(revision.toStdString());
    look();
    set_outcome(chosen ? tr("That state is the record now. The other stays in its history.")
                       : tr("Nothing was chosen. %1").arg(qstring(chosen.error().text())));
    if (chosen) {
        emit recordsChanged();
    }
}

}  // namespace wetfront::ui
