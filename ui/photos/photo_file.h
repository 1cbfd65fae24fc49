// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QImage>
#include <QStringList>

#include "base/result.h"

namespace wetfront::ui {

// Pictures that a camera left in a folder. Links are no files, and only JPEG and PNG are read, whatever a
// file is called. Any thread.

/// Most pixels of a kept photo along its longer side. Ours, no source: a nameplate that fills the picture can
/// be read.
constexpr int most_photo_side = 1280;

/// What place, time and owner the camera wrote into the file.
enum class CameraData { dropped, kept };

/// The pictures in these folders and below, the newest first, at most that many.
[[nodiscard]] QStringList pictures_in(const QStringList& folders, int most);

/// A picture as the record keeps it (is_photo()): upright, no larger than most_photo_side, JPEG, with nothing
/// in it but the picture unless the camera's data is kept on purpose. Bad input where the file cannot be
/// read, is a link, is larger than 64 MiB or holds no picture.
[[nodiscard]] Result<QByteArray> photo_of(const QString& file, CameraData data);

/// The picture in small, upright, to choose by; null where there is none.
[[nodiscard]] QImage small_picture_of(const QString& file, int side);

}  // namespace wetfront::ui
