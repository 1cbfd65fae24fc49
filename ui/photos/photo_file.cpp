// SPDX-License-Identifier: Apache-2.0
#include "photos/photo_file.h"

#include <QBuffer>
#include <QDateTime>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>
#include <algorithm>
#include <vector>

#include "photos/camera_data.h"
#include "records/photo.h"

namespace wetfront::ui {
namespace {

constexpr qint64 most_file_bytes = qint64{64} * 1024 * 1024;
/// A folder with more files than that is no folder of photos.
constexpr int most_looked_at = 5'000;

Error unreadable(const QString& file, const std::string& what) {
    return bad_input(file.toStdString(), what, "choose a photo, JPEG or PNG");
}

Result<QByteArray> bytes_of(const QString& file) {
    if (QFileInfo{file}.isSymLink()) {
        return unreadable(file, "a link to another file");
    }
    QFile opened{file};
    if (!opened.open(QIODevice::ReadOnly)) {
        return unreadable(file, opened.errorString().toStdString());
    }
    auto bytes = opened.read(most_file_bytes + 1);
    if (bytes.size() > most_file_bytes) {
        return unreadable(file, "larger than 64 MiB");
    }
    return bytes;
}

/// Upright, no side longer than that; null where it is no picture.
QImage picture_in(const QByteArray& bytes, int side) {
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer};
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const auto format = reader.format();
    const auto size = reader.size();
    if ((format != "jpeg" && format != "png") || size.isEmpty()) {
        return {};
    }
    if (std::max(size.width(), size.height()) > side) {
        reader.setScaledSize(size.scaled(side, side, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    auto picture = reader.read();
    if (picture.isNull() || !picture.hasAlphaChannel()) {
        return picture;
    }
    QImage opaque{picture.size(), QImage::Format_RGB32};
    opaque.fill(Qt::white);
    QPainter{&opaque}.drawImage(0, 0, picture);
    return opaque;
}

QByteArray as_jpeg(const QImage& picture, int quality) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer{&buffer, "jpeg"};
    writer.setQuality(quality);
    writer.setOptimizedWrite(true);
    // A picture's own texts would be written too.
    auto bare = picture.convertToFormat(QImage::Format_RGB32);
    for (const auto& key : bare.textKeys()) {
        bare.setText(key, {});
    }
    return writer.write(bare) ? bytes : QByteArray{};
}

}  // namespace

QStringList pictures_in(const QStringList& folders, int most) {
    std::vector<std::pair<QDateTime, QString>> found;
    int looked_at = 0;
    for (const auto& folder : folders) {
        QDirIterator each{folder,
                          {QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")},
                          QDir::Files | QDir::NoSymLinks | QDir::Readable,
                          QDirIterator::Subdirectories};
        while (each.hasNext() && looked_at < most_looked_at) {
            each.next();
            ++looked_at;
            found.emplace_back(each.fileInfo().lastModified(), each.filePath());
        }
    }
    std::ranges::sort(found, std::ranges::greater{});
    QStringList files;
    for (std::size_t i = 0; i < std::min(found.size(), static_cast<std::size_t>(most)); ++i) {
        files.append(found[i].second);
    }
    return files;
}

Result<QByteArray> photo_of(const QString& file, CameraData data) {
    WF_TRY(const auto bytes, bytes_of(file));
    const auto picture = picture_in(bytes, most_photo_side);
    if (picture.isNull()) {
        return unreadable(file, "no picture");
    }
    const auto camera = data == CameraData::kept ? as_upright(camera_data(bytes)) : QByteArray{};
    for (const int quality : {82, 60, 30}) {
        auto jpeg = with_camera_data(as_jpeg(picture, quality), camera);
        if (is_photo({jpeg.constData(), static_cast<std::size_t>(jpeg.size())})) {
            return jpeg;
        }
    }
    return unreadable(file, "a picture that stays too large");
}

QImage small_picture_of(const QString& file, int side) {
    const auto bytes = bytes_of(file);
    return bytes ? picture_in(bytes.value(), side) : QImage{};
}

}  // namespace wetfront::ui
