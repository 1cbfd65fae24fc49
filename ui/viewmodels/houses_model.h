// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QTimer>
#include <map>
#include <optional>
#include <vector>

#include "viewmodels/house_sieve.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Length over height of a bank, for its picture; 0: not described.
[[nodiscard]] double aspect_of(const PadBank& bank);

/// The houses list. What a line needs beyond names and dates (banks, findings) takes milliseconds a house, so
/// nothing waits for it: it is worked out once the line came into view, one line in a turn of the event loop,
/// the one that was asked for last first, and told by dataChanged().
///
/// The list can be narrowed by words and by what was found. An answer that needs a house's visits is found in
/// turns of the event loop too, behind the lines in view: houses join the list as they are found, and
/// `unasked` counts down.
class HousesModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(int count READ count NOTIFY countChanged)  // lines shown
    Q_PROPERTY(int total READ total NOTIFY countChanged)  // houses there are
    Q_PROPERTY(QString words READ words WRITE seek NOTIFY narrowed)
    Q_PROPERTY(QString shown READ shown WRITE show NOTIFY
                   narrowed)  // "all", "open", "harm", "fault", "worsening", "due"
    Q_PROPERTY(int unasked READ unasked NOTIFY unaskedChanged)  // houses that may still join the list

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        HouseRole,
        FarmRole,
        VisitsRole,  ///< "3 visits, latest 2026-07-01"
        OpenRole,    ///< the latest visit is not signed
        WorstRole,   ///< severity of the worst finding on the settings found at the latest visit; empty: none
        LastFoundRole,  ///< that finding, one sentence; until it is known, that it is looked for
        BanksRole,      ///< {pumpOnLeft, aspect} a bank, for the thumbnail; empty until known
    };

    HousesModel(const Context& context, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int total() const { return static_cast<int>(houses_.size()); }
    [[nodiscard]] QString words() const { return words_; }
    void seek(const QString& words);
    /// Reads what words are compared with, so that the first letter is answered as fast as the next.
    Q_INVOKABLE void prepareToSeek();
    [[nodiscard]] QString shown() const;
    /// Anything else than the words above is "all".
    void show(const QString& shown);
    [[nodiscard]] int unasked() const { return static_cast<int>(unasked_.size()); }
    /// All houses as they were read last.
    [[nodiscard]] const std::vector<HouseSummary>& houses() const { return houses_; }
    /// Those that the list shows now, in its order.
    [[nodiscard]] std::vector<Id> listed() const;

    /// Reads the list anew.
    [[nodiscard]] Result<void> reload();

signals:
    void countChanged();
    void narrowed();
    void unaskedChanged();

private:
    struct Details {
        QVariantList banks;
        QString worst;
        QString last_found;
    };
    using House = std::size_t;  ///< its place in houses_

    /// Null while it is not worked out, which this asks for.
    [[nodiscard]] const Details* details(House house) const;
    [[nodiscard]] Details work_out(const HouseSummary& house) const;
    void take_turn();
    void work_out_one();
    void ask_one();
    /// Anew which houses are shown, from the words and from what is known.
    void narrow();

    Context context_;
    std::vector<HouseSummary> houses_;
    std::vector<House> rows_;  ///< the houses shown, in their order
    QString words_;
    HousesShown shown_ = HousesShown::all;
    std::optional<HouseWords> texts_;  ///< made when words are sought first
    mutable std::map<House, std::optional<Details>> details_;
    mutable std::vector<House> wanted_;  ///< in view, the next one at the back
    std::map<House, bool> belongs_;      ///< answers to `shown_` that are known
    std::vector<House> unasked_;         ///< without an answer, the next one at the back
    QTimer* turn_;
};

}  // namespace wetfront::ui
