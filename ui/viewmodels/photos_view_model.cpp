// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/photos_view_model.h"

#include <QFileInfo>
#include <QStandardPaths>
#include <algorithm>
#include <set>

#include "cycle/labels.h"
#include "photos/photo_file.h"
#include "store/record_hash.h"

namespace wetfront::ui {
namespace {

constexpr int most_offered = 24;
constexpr int offered_side = 320;

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}
QVariantMap choice(const QString& text, const QString& value) {
    return {{QStringLiteral("text"), text}, {QStringLiteral("value"), value}};
}

}  // namespace

PhotosViewModel::PhotosViewModel(VisitRecord& record, Media media, QObject* parent)
    : QObject{parent}, record_{record}, media_{std::move(media)} {
    connect(&record_, &VisitRecord::changed, this, &PhotosViewModel::changed);
}

QString PhotosViewModel::folder() const {
    return QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
}

bool PhotosViewModel::full() const {
    return record_.file().visit.photos.size() >= most_photos;
}

QVariantList PhotosViewModel::photos() const {
    const auto& file = record_.file();
    const auto& formatter = record_.context().formatter;
    QVariantList list;
    for (const auto& photo : file.visit.photos) {
        const auto* bank = file.house.bank(photo.bank);
        const QString place = bank == nullptr ? tr("House") : formatter.text(label_of(file.house, *bank));
        list.append(QVariantMap{
            {QStringLiteral("title"), tr("Photo %1. %2").arg(QString::number(list.size() + 1), place)},
            {QStringLiteral("note"), qstring(photo.note)},
            {QStringLiteral("picture"), QStringLiteral("kept/") + qstring(photo.sha256)}});
    }
    return list;
}

QVariantList PhotosViewModel::offered() const {
    QVariantList list;
    for (const auto& each : offered_) {
        list.append(QVariantMap{
            {QStringLiteral("name"), QFileInfo{each.file}.fileName()},
            {QStringLiteral("picture"),
             QStringLiteral("offered/%1/%2").arg(QString::number(list.size()), QString::number(looks_))}});
    }
    return list;
}

QVariantList PhotosViewModel::banks() const {
    const auto& house = record_.file().house;
    QVariantList list{choice(tr("House"), {})};
    for (const auto& bank : house.banks) {
        list.append(choice(record_.context().formatter.text(label_of(house, bank)), qstring(bank.id.text)));
    }
    return list;
}

QVariantList PhotosViewModel::findings() const {
    QVariantList list;
    std::set<std::string> rules;
    for (const auto* findings : {&record_.left_findings(), &record_.found_findings()}) {
        for (const auto& finding : *findings) {
            if (finding.severity != Severity::note && rules.insert(finding.rule).second) {
                list.append(choice(record_.context().formatter.text(finding.message), qstring(finding.rule)));
            }
        }
    }
    return list;
}

QImage PhotosViewModel::photo(const QString& place) const {
    const auto key = place.section(QLatin1Char{'/'}, 1, 1);
    if (place.startsWith(QStringLiteral("kept/"))) {
        const auto jpeg = record_.context().store.picture(key.toStdString());
        return jpeg && jpeg.value() ? QImage::fromData(QByteArray::fromStdString(*jpeg.value()), "JPEG")
                                    : QImage{};
    }
    const auto row = key.toUInt();
    return row < offered_.size() ? offered_[row].picture : QImage{};
}

void PhotosViewModel::look() {
    if (looking_) {
        return;
    }
    looking_ = true;
    emit offeredChanged();
    worker_.run(
        [folders = QStringList{folder()} + media_()] {
            std::vector<Offered> found;
            for (const auto& file : pictures_in(folders, most_offered)) {
                if (auto picture = small_picture_of(file, offered_side); !picture.isNull()) {
                    found.push_back({file, std::move(picture)});
                }
            }
            return found;
        },
        [this](const std::vector<Offered>& found) {
            offered_ = found;
            ++looks_;
            looking_ = false;
            emit offeredChanged();
        });
}

QString PhotosViewModel::add(int row, const QString& bank, const QString& finding, bool keepCameraData) {
    if (row < 0 || row >= static_cast<int>(offered_.size())) {
        return tr("Choose a picture.");
    }
    const auto jpeg = photo_of(offered_[static_cast<std::size_t>(row)].file,
                               keepCameraData ? CameraData::kept : CameraData::dropped);
    if (!jpeg) {
        return qstring(jpeg.error().text());
    }
    const Visit before = record_.file().visit;
    const auto bytes = jpeg.value().toStdString();
    Photo photo{photo_hash(bytes),
                Id{bank.toStdString()},
                finding.toStdString(),
                {},
                record_.context().clock.wall_now()};
    auto& photos = record_.visit().photos;
    if (std::ranges::find(photos, photo.sha256, &Photo::sha256) != photos.end()) {
        return tr("This photo is there already.");
    }
    photos.push_back(std::move(photo));
    if (const auto kept = record_.save_with_photo(bytes); !kept) {
        record_.visit() = before;
        return qstring(kept.error().text());
    }
    return {};
}

QString PhotosViewModel::keep_or_restore(const Visit& before) {
    const auto result = record_.save_visit();
    if (!result) {
        record_.visit() = before;
        return qstring(result.error().text());
    }
    return {};
}

QString PhotosViewModel::remove(int row) {
    auto& photos = record_.visit().photos;
    if (row < 0 || row >= static_cast<int>(photos.size())) {
        return {};
    }
    const Visit before = record_.file().visit;
    photos.erase(photos.begin() + row);
    return keep_or_restore(before);
}

QString PhotosViewModel::setNote(int row, const QString& note) {
    auto& photos = record_.visit().photos;
    if (row < 0 || row >= static_cast<int>(photos.size())) {
        return {};
    }
    const Visit before = record_.file().visit;
    photos[static_cast<std::size_t>(row)].note = note.trimmed().toStdString();
    return keep_or_restore(before);
}

}  // namespace wetfront::ui
