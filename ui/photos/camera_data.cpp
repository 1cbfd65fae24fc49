// SPDX-License-Identifier: Apache-2.0
#include "photos/camera_data.h"

#include <QtEndian>

namespace wetfront::ui {
namespace {

constexpr qsizetype tiff_at = 6;  // behind "Exif", 0, 0
constexpr qsizetype most_segment = 65'535 - 2;
constexpr quint16 orientation = 0x0112;
constexpr quint16 of_type_short = 3;

const QByteArray& exif_head() {
    static const QByteArray head{"Exif\0\0", tiff_at};
    return head;
}

/// Numbers in the byte order that the data says.
class Tiff {
public:
    explicit Tiff(QByteArray& data)
        : data_{data},
          little_{data.mid(tiff_at, 2) == "II"},
          known_{little_ || data.mid(tiff_at, 2) == "MM"} {}

    [[nodiscard]] bool known() const { return known_; }
    [[nodiscard]] bool has(qsizetype at, qsizetype size) const {
        return at >= 0 && tiff_at + at + size <= data_.size();
    }
    [[nodiscard]] quint16 two(qsizetype at) const { return number<quint16>(at); }
    [[nodiscard]] quint32 four(qsizetype at) const { return number<quint32>(at); }
    void set_two(qsizetype at, quint16 value) {
        auto* place = data_.data() + tiff_at + at;
        little_ ? qToLittleEndian(value, place) : qToBigEndian(value, place);
    }

private:
    template <class T>
    [[nodiscard]] T number(qsizetype at) const {
        const auto* place = data_.constData() + tiff_at + at;
        return little_ ? qFromLittleEndian<T>(place) : qFromBigEndian<T>(place);
    }

    QByteArray& data_;
    bool little_;
    bool known_;
};

}  // namespace

QByteArray camera_data(const QByteArray& jpeg) {
    if (!jpeg.startsWith("\xFF\xD8")) {
        return {};
    }
    // Segments, each with marker and length, up to the start of the picture.
    for (qsizetype at = 2; at + 4 <= jpeg.size();) {
        const auto marker = static_cast<quint8>(jpeg[at + 1]);
        const auto length = qFromBigEndian<quint16>(jpeg.constData() + at + 2);
        if (static_cast<quint8>(jpeg[at]) != 0xFF || marker == 0xDA || length < 2 ||
            at + 2 + length > jpeg.size()) {
            return {};
        }
        auto content = jpeg.mid(at + 4, length - 2);
        if (marker == 0xE1 && content.startsWith(exif_head())) {
            return content;
        }
        at += 2 + length;
    }
    return {};
}

QByteArray as_upright(QByteArray data) {
    constexpr qsizetype entry_size = 12;
    Tiff tiff{data};
    if (!tiff.known() || !tiff.has(4, 4)) {
        return data;
    }
    const qsizetype directory = tiff.four(4);
    if (!tiff.has(directory, 2)) {
        return data;
    }
    for (qsizetype i = 0; i < tiff.two(directory); ++i) {
        const auto entry = directory + 2 + i * entry_size;
        if (!tiff.has(entry, entry_size)) {
            return data;
        }
        if (tiff.two(entry) == orientation && tiff.two(entry + 2) == of_type_short) {
            tiff.set_two(entry + 8, 1);
        }
    }
    return data;
}

QByteArray with_camera_data(const QByteArray& jpeg, const QByteArray& data) {
    if (data.isEmpty() || data.size() > most_segment || !jpeg.startsWith("\xFF\xD8")) {
        return jpeg;
    }
    QByteArray segment{"\xFF\xE1\0\0", 4};
    qToBigEndian(static_cast<quint16>(data.size() + 2), segment.data() + 2);
    return jpeg.left(2) + segment + data + jpeg.mid(2);
}

}  // namespace wetfront::ui
