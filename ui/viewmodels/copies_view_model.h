// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>
#include <vector>

#include "store/backup.h"
#include "viewmodels/busy_view_model.h"
#include "viewmodels/media.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Copies of the record file: those of every day beside it, and those on sticks and cards.
class CopiesViewModel : public wetfront::ui::BusyViewModel {  // by its whole name, or QML misses it
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString folder READ folder CONSTANT)                 ///< where the copies of every day are
    Q_PROPERTY(QString last READ last NOTIFY changed)               ///< when and where the last copy was made
    Q_PROPERTY(QStringList media READ media NOTIFY changed)         ///< that are plugged in
    Q_PROPERTY(QVariantList copies READ copies NOTIFY changed)      ///< {file, title, place}, newest first
    Q_PROPERTY(QString problem READ problem NOTIFY toldChanged)     ///< with today's copy, or with going back
    Q_PROPERTY(QString notice READ notice NOTIFY toldChanged)       ///< where a replaced file is
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)  ///< of what was pressed last
    Q_PROPERTY(
        QVariantMap looked READ looked NOTIFY outcomeChanged)  ///< {title, place, content, lost}; or empty

public:
    CopiesViewModel(const Context& context, Media media, QObject* parent);
    ~CopiesViewModel() override { finish(); }

    [[nodiscard]] QString folder() const;
    [[nodiscard]] QString last() const;
    [[nodiscard]] QStringList media() const { return media_; }
    [[nodiscard]] QVariantList copies() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString notice() const { return notice_; }
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] QVariantMap looked() const { return looked_; }
    /// The copy that was looked at; empty if none was.
    [[nodiscard]] std::filesystem::path looked_at() const { return looked_at_; }

    /// The copy of today, if there is none yet. What went wrong becomes the problem.
    void back_up_today();
    /// What became of going back to a copy, for the houses page.
    void tell(const QString& notice, const QString& problem);
    void set_outcome(const QString& outcome);

    /// Looks for media and copies anew.
    Q_INVOKABLE void look();
    /// Writes a copy to that medium; the outcome says what came of it.
    Q_INVOKABLE void writeTo(const QString& medium);
    /// Reads that copy; `looked` says what it holds, or the outcome what is wrong with it.
    Q_INVOKABLE void lookAt(const QString& file);
    /// Forgets the copy that was looked at.
    Q_INVOKABLE void drop();

signals:
    void changed();
    void toldChanged();
    void outcomeChanged();

private:
    struct Copy {
        Backup backup;
        QString place;
    };
    void show_content(const Copy& copy, const RecordContent& content);
    [[nodiscard]] QString lost_by(const RecordContent& content) const;

    Context context_;
    Media find_media_;
    QStringList media_;
    std::vector<Copy> copies_;  ///< newest first
    QString backup_problem_;
    QString restore_problem_;
    QString notice_;
    QString outcome_;
    QVariantMap looked_;
    std::filesystem::path looked_at_;
};

/// "houses: 3, entries: 92, latest entry 2026-07-01 10:04"
[[nodiscard]] QString content_words(const RecordContent& content, const Formatter& formatter);

}  // namespace wetfront::ui
