// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>

namespace wetfront::ui {

// What a camera writes into a JPEG file about place, time, owner and itself: the segment APP1 that begins
// with "Exif". JEITA CP-3451 (Exif 2.2), 4.5.2 and 4.6.4 A (second hand).

/// That segment's content, without marker and length; empty where the file has none, or has it cut off.
[[nodiscard]] QByteArray camera_data(const QByteArray& jpeg);

/// The same, saying that the picture stands upright (orientation 1). What cannot be followed is left as it
/// is.
[[nodiscard]] QByteArray as_upright(QByteArray data);

/// The JPEG file with that segment put in first. As it is where the data does not fit into a segment (65,533
/// bytes) or is empty.
[[nodiscard]] QByteArray with_camera_data(const QByteArray& jpeg, const QByteArray& data);

}  // namespace wetfront::ui
