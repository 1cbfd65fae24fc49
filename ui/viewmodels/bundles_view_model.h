// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>
#include <vector>

#include "sheet/change_words.h"
#include "store/bundle.h"
#include "viewmodels/busy_view_model.h"
#include "viewmodels/media.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Records that go to another machine or come from one, on a stick: bundles out, bundles in with a look
/// before, receipts both ways, and the choice where two machines changed the same.
class BundlesViewModel : public wetfront::ui::BusyViewModel {  // by its whole name, or QML misses it
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QStringList media READ media NOTIFY changed)         ///< that are plugged in
    Q_PROPERTY(QVariantList outgoing READ outgoing NOTIFY changed)  ///< {value, text}: what can be written
    Q_PROPERTY(QVariantList incoming READ incoming NOTIFY changed)  ///< {file, title, place, isReceipt}
    Q_PROPERTY(
        QVariantList split READ split NOTIFY changed)    ///< {title, states: [{revision, text}], differences:
                                                         ///< [{place, first, second}]}
    Q_PROPERTY(QString aside READ aside NOTIFY changed)  ///< what is kept aside, if anything
    Q_PROPERTY(QVariantMap looked READ looked NOTIFY outcomeChanged)  ///< {title, lines: [text]}; or empty
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)    ///< of what was pressed last

public:
    BundlesViewModel(const Context& context, Media media, QObject* parent);
    ~BundlesViewModel() override { finish(); }

    [[nodiscard]] QStringList media() const { return media_; }
    [[nodiscard]] QVariantList outgoing() const;
    [[nodiscard]] QVariantList incoming() const;
    [[nodiscard]] QVariantList split() const;
    [[nodiscard]] QString aside() const;
    [[nodiscard]] QVariantMap looked() const { return looked_; }
    [[nodiscard]] QString outcome() const { return outcome_; }

    /// The page is opened: nothing stands there from before. `house`: the one it was opened from; its id is
    /// empty where it was opened from the list of all.
    void begin_anew(const House& house);
    /// Looks for media and their files anew, and for records that have two states.
    Q_INVOKABLE void look();
    /// Writes that value of `outgoing` to that medium, and reads it back.
    Q_INVOKABLE void writeTo(const QString& medium, const QString& what);
    /// A bundle: `looked` says what taking it in would do. A receipt is read at once.
    Q_INVOKABLE void lookAt(const QString& file);
    /// Takes in the bundle that was looked at and writes its receipt beside it.
    Q_INVOKABLE void takeIn();
    /// Forgets what was looked at.
    Q_INVOKABLE void drop();
    /// Makes that state the only one of its record.
    Q_INVOKABLE void choose(const QString& revision);

signals:
    void changed();
    void outcomeChanged();
    void recordsChanged();  ///< what the houses page shows may be another now

private:
    struct Incoming {
        std::filesystem::path file;
        QString place;
        bool is_receipt = false;
    };
    struct Taken {
        Result<BundleReport> report;
        Result<void> receipt;
    };
    void set_outcome(const QString& outcome);
    [[nodiscard]] QStringList lines_of(const BundleReport& report) const;
    [[nodiscard]] QString name_of(const SplitRecord& record) const;
    [[nodiscard]] std::vector<TwoStates> differences_of(const SplitRecord& record) const;
    void read_receipt(const std::filesystem::path& file);

    Context context_;
    Media find_media_;
    QStringList media_;
    House house_;  ///< offered first; without an id: none is
    std::vector<Incoming> incoming_;
    std::vector<SplitRecord> split_;
    std::vector<KeptAside> aside_;
    QVariantMap looked_;
    std::filesystem::path looked_at_;
    QString outcome_;
};

}  // namespace wetfront::ui
