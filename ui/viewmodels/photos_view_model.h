// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QVariantList>
#include <vector>

#include "viewmodels/media.h"
#include "viewmodels/visit_record.h"
#include "viewmodels/worker.h"

namespace wetfront::ui {

/// The visit's photos: what was taken with the tablet's camera, or lies on a stick, is chosen by its picture
/// and put to a bank or a finding.
class PhotosViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    /// {title, note, picture}; `picture` is a place of photo().
    Q_PROPERTY(QVariantList photos READ photos NOTIFY changed)
    Q_PROPERTY(bool full READ full NOTIFY changed)
    /// What can be chosen, the newest first: {name, picture}.
    Q_PROPERTY(QVariantList offered READ offered NOTIFY offeredChanged)
    Q_PROPERTY(bool looking READ looking NOTIFY offeredChanged)
    Q_PROPERTY(QString folder READ folder CONSTANT)
    /// What a photo may show: {text, value}.
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)
    Q_PROPERTY(QVariantList findings READ findings NOTIFY changed)

public:
    PhotosViewModel(VisitRecord& record, Media media, QObject* parent);

    [[nodiscard]] QVariantList photos() const;
    [[nodiscard]] bool full() const;
    [[nodiscard]] QVariantList offered() const;
    [[nodiscard]] bool looking() const { return looking_; }
    [[nodiscard]] QString folder() const;
    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] QVariantList findings() const;

    /// "kept/<hash>" or "offered/<row>/<any>"; null where there is none.
    [[nodiscard]] QImage photo(const QString& place) const;

    /// Looks for pictures anew.
    Q_INVOKABLE void look();
    /// Puts the offered picture of that row to the visit; why not, or nothing.
    Q_INVOKABLE QString add(int row, const QString& bank, const QString& finding, bool keepCameraData);
    Q_INVOKABLE QString remove(int row);
    Q_INVOKABLE QString setNote(int row, const QString& note);

signals:
    void changed();
    void offeredChanged();

private:
    struct Offered {
        QString file;
        QImage picture;
    };
    [[nodiscard]] QString keep_or_restore(const Visit& before);

    VisitRecord& record_;
    Media media_;
    std::vector<Offered> offered_;
    bool looking_ = false;
    int looks_ = 0;
    Worker worker_{this};
};

}  // namespace wetfront::ui
