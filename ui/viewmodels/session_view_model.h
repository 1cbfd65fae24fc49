// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <memory>

#include "viewmodels/awake.h"
#include "viewmodels/bundles_view_model.h"
#include "viewmodels/copies_view_model.h"
#include "viewmodels/day_view_model.h"
#include "viewmodels/history_view_model.h"
#include "viewmodels/houses_model.h"
#include "viewmodels/maintenance_view_model.h"
#include "viewmodels/preferences.h"
#include "viewmodels/press_files.h"
#include "viewmodels/pump_off.h"
#include "viewmodels/removed_view_model.h"
#include "viewmodels/sheets_view_model.h"
#include "viewmodels/template_view_model.h"
#include "viewmodels/templates_view_model.h"
#include "viewmodels/visit_view_model.h"

namespace wetfront::ui {

/// The program: where one is (houses, a house, a visit), and how things are shown. Made by the desktop main,
/// handed to the window; lives as long as the store. GUI thread.
class SessionViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString place READ place NOTIFY placeChanged)  ///< "houses", "house", "visit", "templates",
                                                              ///< "template", "copies", "bundles", "sheets"
                                                              ///< or "removed"
    Q_PROPERTY(wetfront::ui::CopiesViewModel* copies READ copies CONSTANT)
    Q_PROPERTY(wetfront::ui::BundlesViewModel* bundles READ bundles CONSTANT)
    Q_PROPERTY(wetfront::ui::SheetsViewModel* sheets READ sheets CONSTANT)
    Q_PROPERTY(wetfront::ui::RemovedViewModel* removed READ removed CONSTANT)
    Q_PROPERTY(wetfront::ui::HistoryViewModel* history READ history CONSTANT)  ///< of the house
    Q_PROPERTY(wetfront::ui::DayViewModel* day READ day CONSTANT)  ///< of the house's latest visit
    Q_PROPERTY(wetfront::ui::MaintenanceViewModel* maintenance READ maintenance CONSTANT)  ///< of the house
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)  ///< the record file is only looked at
    Q_PROPERTY(wetfront::ui::HousesModel* houses READ houses CONSTANT)
    Q_PROPERTY(
        QVariantList farms READ farms NOTIFY placeChanged)  ///< {value, text}; the last one is a new farm
    Q_PROPERTY(QString houseId READ houseId NOTIFY placeChanged)
    Q_PROPERTY(QString houseName READ houseName NOTIFY placeChanged)
    Q_PROPERTY(QString houseFarm READ houseFarm NOTIFY placeChanged)
    Q_PROPERTY(
        QVariantList houseBanks READ houseBanks NOTIFY placeChanged)  ///< {name, text, pumpOnLeft, aspect}
    Q_PROPERTY(
        QVariantList houseVisits READ houseVisits NOTIFY placeChanged)  ///< {id, title, detail, isSigned}
    Q_PROPERTY(wetfront::ui::VisitViewModel* visit READ visit NOTIFY placeChanged)
    Q_PROPERTY(wetfront::ui::TemplatesViewModel* templates READ templates CONSTANT)
    /// The setting template at hand; null at any place but "template".
    Q_PROPERTY(wetfront::ui::TemplateViewModel* described READ described NOTIFY placeChanged)
    Q_PROPERTY(QString unitSystem READ unitSystem WRITE setUnitSystem NOTIFY shownChanged)  ///< "us" or "si"
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY shownChanged)  ///< "sun", "shade" or "night"
    Q_PROPERTY(QString decimalMark READ decimalMark NOTIFY shownChanged)
    /// The code of a language ("es"); empty: as the system has it.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY shownChanged)
    Q_PROPERTY(QVariantList languages READ languages NOTIFY shownChanged)  ///< {value, text}, to choose from
    Q_PROPERTY(QString pumpOffText READ pumpOffText NOTIFY
                   pumpOffChanged)  ///< of the pump with least time left, wherever
                                    ///< it is; empty: none is off for a test
    Q_PROPERTY(bool pumpOffUrgent READ pumpOffUrgent NOTIFY pumpOffChanged)
    Q_PROPERTY(
        QString awakeProblem READ awakeProblem NOTIFY
            awakeProblemChanged)  ///< why the screen may go dark while something is timed; empty: it won't
    Q_PROPERTY(
        bool foundPressesFit READ foundPressesFit NOTIFY foundPressesChanged)  ///< their visit takes them
    Q_PROPERTY(
        QString foundPresses READ foundPresses NOTIFY
            foundPressesChanged)  ///< what was written elsewhere and is not in the record; empty: nothing
    Q_PROPERTY(bool demo READ demo CONSTANT)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)

public:
    SessionViewModel(const Context& context, const PressClock& presses, Awake& awake, SheetPaper paper,
                     Preferences preferences, bool demo, Media media, QObject* parent = nullptr);
    ~SessionViewModel() override;

    [[nodiscard]] QString place() const;
    [[nodiscard]] HousesModel* houses() const { return houses_; }
    [[nodiscard]] CopiesViewModel* copies() const { return copies_; }
    [[nodiscard]] BundlesViewModel* bundles() const { return bundles_; }
    [[nodiscard]] SheetsViewModel* sheets() const { return sheets_; }
    [[nodiscard]] RemovedViewModel* removed() const { return removed_; }
    [[nodiscard]] HistoryViewModel* history() const { return history_; }
    [[nodiscard]] DayViewModel* day() const { return day_; }
    [[nodiscard]] MaintenanceViewModel* maintenance() const { return maintenance_; }
    [[nodiscard]] bool readOnly() const { return context_.store.mode() == OpenMode::read_only; }
    [[nodiscard]] QVariantList farms() const;
    [[nodiscard]] QString houseId() const { return QString::fromStdString(house_.id.text); }
    [[nodiscard]] QString houseName() const { return QString::fromStdString(house_.name); }
    [[nodiscard]] QString houseFarm() const;
    [[nodiscard]] QVariantList houseBanks() const;
    [[nodiscard]] QVariantList houseVisits() const;
    [[nodiscard]] VisitViewModel* visit() const { return visit_.get(); }
    [[nodiscard]] TemplatesViewModel* templates() const { return templates_; }
    [[nodiscard]] TemplateViewModel* described() const { return described_.get(); }
    [[nodiscard]] QString unitSystem() const;
    void setUnitSystem(const QString& name);
    [[nodiscard]] QString theme() const { return theme_; }
    void setTheme(const QString& name);
    [[nodiscard]] QString decimalMark() const;
    [[nodiscard]] QString language() const { return language_; }
    /// At once, in place; refused, with a problem told, while presses wait to be stored.
    void setLanguage(const QString& code);
    [[nodiscard]] QVariantList languages() const;
    [[nodiscard]] QString pumpOffText() const;
    [[nodiscard]] bool pumpOffUrgent() const;
    [[nodiscard]] QString awakeProblem() const { return awake_.problem(); }
    [[nodiscard]] QString foundPresses() const;
    [[nodiscard]] bool foundPressesFit() const { return !found_.empty() && !found_.front().is_signed; }
    [[nodiscard]] bool demo() const { return demo_; }
    [[nodiscard]] QString problem() const { return problem_; }
    /// Shown on every page until something is done that could fail too.
    void set_problem(const QString& problem);

    Q_INVOKABLE void openHouse(const QString& id);
    Q_INVOKABLE void openVisit(const QString& id);
    /// A new visit of the house at hand; description and persons come over from the latest one.
    Q_INVOKABLE void startVisit();
    /// A new house, on an existing farm (`farmId`) or a new one (`farmName`); opens its first visit.
    Q_INVOKABLE void startHouse(const QString& farmId, const QString& farmName, const QString& houseName);
    /// To the firm's setting templates, from anywhere; a visit that is open stays open behind them.
    Q_INVOKABLE void showTemplates();
    /// To the copies of the records, from the houses or a house.
    Q_INVOKABLE void showCopies();
    /// To the records that go to another machine or come from one, from the houses.
    Q_INVOKABLE void showBundles();
    /// To printing and handing out the sheets of many visits, from the houses or a house.
    Q_INVOKABLE void showSheets();
    /// To what was taken out of the lists, from the houses.
    Q_INVOKABLE void showRemoved();
    /// Goes back to the copy that was looked at: the program ends here and opens again on it (goBackAsked).
    /// Not while a pump is off for a test.
    Q_INVOKABLE void goBackToCopy();
    Q_INVOKABLE void openTemplate(const QString& id);
    /// Makes a template that starts as that one does, and opens it.
    Q_INVOKABLE void makeTemplate(const QString& id);
    /// Back to where one came from; while a pump runs on the stopwatch, or is off for a test, it asks first
    /// (leaveAsked).
    Q_INVOKABLE void leave();
    /// Whether the window may close now; if not, it asks (leaveAsked).
    Q_INVOKABLE bool mayClose();
    /// The answer to leaveAsked: leaves the page, or closes the window, all the same.
    Q_INVOKABLE void leaveAnyway(bool closing);

    /// The copy of today, if none was made yet; not of the demo, and not where nothing is written.
    void back_up_today();
    /// Where presses can be written that the record file does not take.
    Q_INVOKABLE QStringList pressFolders() const;
    /// Puts the presses that were found elsewhere into the record.
    Q_INVOKABLE void takeFoundPresses();
    /// Leaves them where they are until the next start.
    Q_INVOKABLE void leaveFoundPresses();

    /// Looks for presses that were written elsewhere.
    void look_for_presses();
    /// If a stopwatch was running when the program ended, opens there. Returns true if it did.
    bool resume_running_visit(TimedIn where = TimedIn::all_marks);
    [[nodiscard]] QImage sheet_page(int index) const;
    [[nodiscard]] QImage summary_page() const;

signals:
    void placeChanged();
    void shownChanged();
    void languageChanged();  ///< what is written in QML has to be said again
    void problemChanged();
    void leaveAsked(const QString& question, const QString& detail, bool closing);
    void pumpOffChanged();
    void awakeProblemChanged();
    void foundPressesChanged();
    void closeNow();
    void goBackAsked();

private:
    template <class T>
    bool failed(const Result<T>& result) {
        set_problem(result ? QString{} : QString::fromStdString(result.error().text()));
        return !result;
    }
    template <class ViewModel>
    void take_down(std::unique_ptr<ViewModel> closing) {
        emit placeChanged();  // takes down the views that are bound to it
        closing.release()->deleteLater();
    }
    void take_up_preferences();
    void speak();
    void say_again();
    [[nodiscard]] bool busy() const;  ///< a copy or a sheet is being written
    void show_visit(VisitFile file);
    void go_back();
    void show_template(SettingTemplate described);
    void go_back_from_templates();
    /// The page that lies over houses, house or visit; where it closes, that is there again.
    enum class Over { nothing, templates, copies, bundles, sheets, removed };
    void lay_over(Over page);
    void follow_removed();
    [[nodiscard]] std::function<QStringList()> template_folders_of_mine() const;
    void show_house(House house);
    [[nodiscard]] bool asks_before_leaving(bool closing);
    [[nodiscard]] std::vector<PumpOff> all_pumps_off() const;
    [[nodiscard]] std::optional<PumpOff> most_urgent_pump() const;
    void follow_pumps();
    void look_for_timing_elsewhere();
    void follow_timing();
    [[nodiscard]] VisitViewModel::Known known_before(const VisitFile& file);
    [[nodiscard]] std::optional<VisitFile> latest_of_house() const;
    [[nodiscard]] std::optional<VisitFile> latest_before(const VisitFile& file) const;

    Context context_;
    const PressClock& presses_;
    Awake& awake_;
    SheetPaper paper_;
    Preferences preferences_;
    bool demo_;
    HousesModel* houses_;
    House house_;
    std::unique_ptr<VisitViewModel> visit_;
    Over over_ = Over::nothing;
    TemplatesViewModel* templates_;
    std::unique_ptr<TemplateViewModel> described_;
    CopiesViewModel* copies_;
    BundlesViewModel* bundles_;
    SheetsViewModel* sheets_;
    RemovedViewModel* removed_;
    HistoryViewModel* history_;
    MaintenanceViewModel* maintenance_;
    DayViewModel* day_;
    QString theme_ = QStringLiteral("sun");
    QString language_;
    QString problem_;
    bool closing_ = false;
    std::vector<PumpOff> off_elsewhere_;  ///< left behind in visits that are not open here any more
    bool timed_elsewhere_ = false;        ///< a visit that was left still runs on its stopwatch
    std::vector<FoundPresses> found_;
    QTimer second_;
    QTimer minute_;  ///< asks while timed_elsewhere_ whether it still is
};

}  // namespace wetfront::ui
