// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTemporaryDir>
#include <QVariantList>
#include <memory>

#include "viewmodels/sheet_batch.h"
#include "viewmodels/sheet_look.h"

namespace wetfront::ui {

/// The page on which the sheets of many visits are printed or put into a folder: of which houses and days, as
/// what, where to, how far it is. GUI thread.
class SheetsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantList places READ places NOTIFY chosenChanged)  ///< {value, text}: a house, a farm, all
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY chosenChanged)
    Q_PROPERTY(QVariantList spans READ spans NOTIFY chosenChanged)  ///< {value, text} of days
    Q_PROPERTY(QString span READ span WRITE setSpan NOTIFY chosenChanged)
    Q_PROPERTY(QString visits READ visits WRITE setVisits NOTIFY chosenChanged)  ///< "signed" or "last"
    Q_PROPERTY(bool summaries READ summaries WRITE setSummaries NOTIFY chosenChanged)
    Q_PROPERTY(QVariantList languages READ languages CONSTANT)                         ///< {value, text}
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY chosenChanged)  ///< as SheetLook
    Q_PROPERTY(QString units READ units WRITE setUnits NOTIFY chosenChanged)
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY chosenChanged)
    Q_PROPERTY(QStringList media READ media NOTIFY mediaChanged)  ///< that are plugged in
    Q_PROPERTY(QString folder READ folder CONSTANT)               ///< on this tablet
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY outcomeChanged)
    Q_PROPERTY(
        QStringList missing READ missing NOTIFY outcomeChanged)  ///< sheets that were not made, and why
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(QString busyText READ busyText NOTIFY busyChanged)
    Q_PROPERTY(bool stoppable READ stoppable NOTIFY busyChanged)
    Q_PROPERTY(double progress READ progress NOTIFY busyChanged)  ///< 0 to 1; below 0: not known

public:
    SheetsViewModel(const Context& context, const SheetPaper& paper, QObject* parent);

    [[nodiscard]] QVariantList places() const;
    [[nodiscard]] int place() const { return place_; }
    void setPlace(int place);
    [[nodiscard]] QVariantList spans() const;
    [[nodiscard]] QString span() const { return span_; }
    void setSpan(const QString& span);
    [[nodiscard]] QString visits() const;
    void setVisits(const QString& visits);
    [[nodiscard]] bool summaries() const { return kind_ == SheetKind::summary; }
    void setSummaries(bool summaries);
    [[nodiscard]] QVariantList languages() const { return SheetLook::languages(); }
    [[nodiscard]] QString language() const { return look_.language(); }
    void setLanguage(const QString& code);
    [[nodiscard]] QString units() const { return look_.units(); }
    void setUnits(const QString& name);
    [[nodiscard]] QString paper() const { return look_.paper(); }
    void setPaper(const QString& name);
    [[nodiscard]] QStringList media() const { return media_; }
    [[nodiscard]] QString folder() const { return paper_.folder; }
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QStringList missing() const { return missing_; }
    [[nodiscard]] bool busy() const { return batch_.running() || handing_over_; }
    [[nodiscard]] QString busyText() const;
    [[nodiscard]] bool stoppable() const { return batch_.running(); }
    [[nodiscard]] double progress() const;

    /// What there is to choose from: the house that one comes from, its farm and all houses; or, from the
    /// list, the houses that are `listed` in it, each farm where they are few, and all houses.
    void offer(const std::vector<HouseSummary>& all, const std::optional<Id>& house, std::vector<Id> listed);

    Q_INVOKABLE void look();  ///< for sticks, anew
    Q_INVOKABLE void print();
    Q_INVOKABLE void writeTo(const QString& medium);
    Q_INVOKABLE void writeToFolder();
    /// Ends after the sheet at hand. What was written stays; nothing is printed.
    Q_INVOKABLE void stop();

signals:
    void chosenChanged();
    void mediaChanged();
    void outcomeChanged();
    void busyChanged();

private:
    struct Place {
        QString text;
        std::vector<Id> houses;
    };
    void tell(const QString& outcome, const QString& problem, const QStringList& missing = {});
    void begin(const QString& folder);
    [[nodiscard]] SheetChoice choice() const;
    void end();
    void hand_over();
    [[nodiscard]] QString counted(const QString& what) const;
    [[nodiscard]] QStringList missing_words() const;

    Context context_;
    const SheetPaper& paper_;
    SheetLook look_;
    std::vector<Place> places_;
    int place_ = 0;
    QString span_ = QStringLiteral("season");
    SheetVisits visits_ = SheetVisits::every_signed;
    SheetKind kind_ = SheetKind::commissioning;
    QStringList media_;
    QString outcome_;
    QString problem_;
    QStringList missing_;
    QString where_;                            ///< the folder of the batch at hand
    QString medium_;                           ///< where that is on a stick
    std::optional<PrintFiles> printer_;        ///< where it is for one
    std::unique_ptr<QTemporaryDir> to_print_;  ///< files for it
    bool handing_over_ = false;
    SheetBatch batch_;
    Worker worker_{this};
};

}  // namespace wetfront::ui
