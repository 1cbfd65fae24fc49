// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/session_view_model.h"

#include <QDir>
#include <algorithm>

#include "viewmodels/template_files.h"

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

template <class List, class Name>
void add_new(List& known, const List& more, Name name) {
    for (const auto& entry : more) {
        if (std::none_of(known.begin(), known.end(),
                         [&](const auto& other) { return name(other) == name(entry); })) {
            known.push_back(entry);
        }
    }
}

constexpr std::size_t houses_read_for_names = 5;
constexpr int second_ms = 1000;
constexpr int minute_ms = 60'000;

}  // namespace

SessionViewModel::SessionViewModel(const Context& context, const PressClock& presses, Awake& awake,
                                   SheetPaper paper, Preferences preferences, bool demo, Media media,
                                   QObject* parent)
    : QObject{parent},
      context_{context},
      presses_{presses},
      awake_{awake},
      paper_{std::move(paper)},
      preferences_{std::move(preferences)},
      demo_{demo},
      houses_{new HousesModel{context, this}},
      templates_{new TemplatesViewModel{context, template_folders_of_mine(), this}},
      copies_{new CopiesViewModel{context, media, this}},
      bundles_{new BundlesViewModel{context, media, this}},
      sheets_{new SheetsViewModel{context, paper_, this}},
      removed_{new RemovedViewModel{context, this}},
      history_{new HistoryViewModel{context, this}},
      maintenance_{new MaintenanceViewModel{context, this}},
      day_{new DayViewModel{context.formatter, [this] { return latest_of_house(); },
                            [this] { return QStringList{paper_.folder} + paper_.media(); }, this}} {
    paper_.media = std::move(media);
    take_up_preferences();
    second_.setInterval(second_ms);
    minute_.setInterval(minute_ms);
    connect(&awake_, &Awake::problem_changed, this, &SessionViewModel::awakeProblemChanged);
    connect(&second_, &QTimer::timeout, this, &SessionViewModel::follow_pumps);
    connect(&minute_, &QTimer::timeout, this, &SessionViewModel::look_for_timing_elsewhere);
    if (!failed(houses_->reload())) {
        failed(removed_->reload());
    }
    connect(removed_, &RemovedViewModel::changed, this, &SessionViewModel::follow_removed);
    connect(bundles_, &BundlesViewModel::recordsChanged, this, [this] {
        if (!failed(houses_->reload())) {
            failed(removed_->reload());
        }
        look_for_timing_elsewhere();
    });
    connect(maintenance_, &MaintenanceViewModel::houseChanged, this, [this] {
        house_ = maintenance_->house();
        removed_->forget();
        failed(history_->show(house_));
    });
}

SessionViewModel::~SessionViewModel() = default;

void SessionViewModel::set_problem(const QString& problem) {
    if (problem != problem_) {
        problem_ = problem;
        emit problemChanged();
    }
}

QString SessionViewModel::place() const {
    if (described_) {
        return QStringLiteral("template");
    }
    switch (over_) {
        case Over::templates:
            return QStringLiteral("templates");
        case Over::copies:
            return QStringLiteral("copies");
        case Over::bundles:
            return QStringLiteral("bundles");
        case Over::sheets:
            return QStringLiteral("sheets");
        case Over::removed:
            return QStringLiteral("removed");
        case Over::nothing:
            break;
    }
    return visit_              ? QStringLiteral("visit")
           : house_.id.empty() ? QStringLiteral("houses")
                               : QStringLiteral("house");
}

void SessionViewModel::lay_over(Over page) {
    over_ = page;
    emit placeChanged();
}

QVariantList SessionViewModel::farms() const {
    QVariantList list;
    if (const auto farms = context_.store.farms()) {
        for (const auto& farm : farms.value()) {
            list.append(QVariantMap{{"value", qstring(farm.id.text)}, {"text", qstring(farm.name)}});
        }
    }
    list.append(QVariantMap{{"value", QString{}}, {"text", tr("Another farm")}});
    return list;
}

QString SessionViewModel::houseFarm() const {
    const auto farm = house_.id.empty() ? Result<Farm>{Farm{}} : context_.store.farm(house_.farm);
    return farm ? qstring(farm.value().name) : QString{};
}

QVariantList SessionViewModel::houseBanks() const {
    QVariantList list;
    for (const auto& bank : house_.banks) {
        QStringList parts;
        if (bank.length) {
            parts.append(context_.formatter.text(any(bank.length->value())));
        }
        if (const auto* pump = house_.pump(bank.pump)) {
            parts.append(tr("fed by %1").arg(qstring(pump->name)));
        }
        list.append(QVariantMap{{"name", qstring(bank.name)},
                                {"text", parts.join(QStringLiteral(", "))},
                                {"pumpOnLeft", bank.pump_end == PumpEnd::left},
                                {"aspect", aspect_of(bank)}});
    }
    return list;
}

QVariantList SessionViewModel::houseVisits() const {
    QVariantList list;
    if (house_.id.empty()) {
        return list;
    }
    if (const auto visits = context_.store.visits_of(house_.id)) {
        for (const auto& visit : visits.value()) {
            list.append(QVariantMap{
                {"id", qstring(visit.visit.text)},
                {"title", context_.formatter.date(visit.started)},
                {"detail",
                 (visit.is_signed ? tr("signed, presses: %1") : tr("open, presses: %1")).arg(visit.marks)},
                {"isSigned", visit.is_signed}});
        }
    }
    return list;
}

void SessionViewModel::openHouse(const QString& id) {
    auto house = context_.store.house(Id{id.toStdString()});
    if (!failed(house)) {
        removed_->forget();
        copies_->tell({}, {});
        show_house(std::move(house).value());
        emit placeChanged();
    }
}

void SessionViewModel::show_house(House house) {
    house_ = std::move(house);
    maintenance_->show(house_);
    failed(history_->show(house_));
    day_->follow();
}

void SessionViewModel::openVisit(const QString& id) {
    auto file = context_.store.visit_file(Id{id.toStdString()});
    if (!failed(file)) {
        show_visit(std::move(file).value());
    }
}

VisitViewModel::Known SessionViewModel::known_before(const VisitFile& file) {
    VisitViewModel::Known known;
    const auto add_names = [&known](const Visit& visit) {
        add_new(known.persons, visit.persons, [](const Person& person) { return person.name; });
        add_new(known.instruments, visit.instruments,
                [](const Instrument& instrument) { return instrument.name; });
    };
    if (const auto latest = latest_before(file)) {
        known.earlier = timings_of(*latest);
        add_names(latest->visit);
    }
    // Who works here has mostly worked in another house before.
    std::size_t read = 0;
    for (const auto& house : houses_->houses()) {
        if (read == houses_read_for_names) {
            break;
        }
        if (house.latest_visit && *house.latest_visit != file.visit.id) {
            if (const auto visit = context_.store.visit(*house.latest_visit)) {
                add_names(visit.value());
                ++read;
            }
        }
    }
    return known;
}

std::optional<VisitFile> SessionViewModel::latest_of_house() const {
    const auto visits = context_.store.visits_of(house_.id);
    const auto latest = visits && !visits.value().empty()
                            ? context_.store.visit_file(visits.value().front().visit)
                            : Result<VisitFile>{bad_input("house", house_.id.text, "one that was visited")};
    return latest ? std::optional{latest.value()} : std::nullopt;
}

std::optional<VisitFile> SessionViewModel::latest_before(const VisitFile& file) const {
    const auto visits = context_.store.visits_of(file.house.id);
    for (const auto& summary : visits ? visits.value() : std::vector<VisitSummary>{}) {
        if (summary.visit != file.visit.id && !(file.visit.started < summary.started)) {
            const auto earlier = context_.store.visit_file(summary.visit);
            return earlier ? std::optional{earlier.value()} : std::nullopt;
        }
    }
    return std::nullopt;
}

void SessionViewModel::show_visit(VisitFile file) {
    if (visit_) {
        visit_->close();
        take_down(std::move(visit_));
    }
    auto known = known_before(file);
    removed_->forget();
    house_ = file.house;
    visit_ = std::make_unique<VisitViewModel>(context_, presses_, paper_, std::move(file), std::move(known),
                                              nullptr);
    QObject::connect(visit_.get(), &VisitViewModel::changed, this, [this] {
        house_ = visit_->file().house;
        follow_pumps();
    });
    // What was left off in this visit counts down in it again.
    std::erase_if(off_elsewhere_, [&](const PumpOff& pump) { return pump.visit == visit_->file().visit.id; });
    look_for_timing_elsewhere();
    follow_pumps();
    emit placeChanged();
}

void SessionViewModel::startVisit() {
    if (house_.id.empty()) {
        return;
    }
    back_up_today();
    auto farm = context_.store.farm(house_.farm);
    if (failed(farm)) {
        return;
    }
    VisitFile file{std::move(farm).value(), house_, {}};
    file.visit.id = context_.store.new_id();
    file.visit.house = house_.id;
    file.visit.started = context_.clock.wall_now();
    if (const auto latest = latest_before(file)) {
        file.visit.persons = latest->visit.persons;
        file.visit.instruments = latest->visit.instruments;
    }
    if (!failed(context_.store.save(file.visit))) {
        show_visit(std::move(file));
    }
}

void SessionViewModel::startHouse(const QString& farmId, const QString& farmName, const QString& houseName) {
    if (houseName.trimmed().isEmpty() || (farmId.isEmpty() && farmName.trimmed().isEmpty())) {
        set_problem(tr("A house needs a name, and a farm."));
        return;
    }
    Id farm_id{farmId.toStdString()};
    if (farm_id.empty()) {
        Farm farm;
        farm.id = context_.store.new_id();
        farm.name = farmName.trimmed().toStdString();
        farm_id = farm.id;
        if (failed(context_.store.save(farm))) {
            return;
        }
    }
    House house = new_house(context_.store, farm_id, houseName.trimmed().toStdString());
    if (failed(context_.store.save(house))) {
        return;
    }
    house_ = std::move(house);
    failed(houses_->reload());
    startVisit();
}

std::function<QStringList()> SessionViewModel::template_folders_of_mine() const {
    return [folder = paper_.folder] { return template_folders(folder); };
}

void SessionViewModel::showTemplates() {
    if (!failed(templates_->reload())) {
        removed_->forget();
        lay_over(Over::templates);
    }
}

void SessionViewModel::showRemoved() {
    removed_->forget();
    if (!failed(removed_->reload())) {
        lay_over(Over::removed);
    }
}

void SessionViewModel::follow_removed() {
    if (removed_->holds(RecordKind::house, house_.id)) {
        house_ = House{};
    }
    if (!failed(houses_->reload()) && over_ == Over::templates) {
        failed(templates_->reload());
    }
    emit placeChanged();
}

void SessionViewModel::showCopies() {
    if (visit_ || over_ == Over::templates) {
        return;
    }
    copies_->set_outcome({});
    copies_->look();
    lay_over(Over::copies);
}

void SessionViewModel::showBundles() {
    if (visit_ || over_ != Over::nothing || readOnly()) {
        return;
    }
    bundles_->begin_anew(house_);
    lay_over(Over::bundles);
}

void SessionViewModel::showSheets() {
    if (visit_ || over_ == Over::templates) {
        return;
    }
    const auto all = context_.store.houses();  // a name may have changed since the list was read
    if (failed(all)) {
        return;
    }
    removed_->forget();
    sheets_->offer(all.value(), house_.id.empty() ? std::nullopt : std::optional{house_.id},
                   houses_->listed());
    lay_over(Over::sheets);
}

void SessionViewModel::goBackToCopy() {
    if (!all_pumps_off().empty()) {
        copies_->drop();
        copies_->set_outcome(
            tr("A pump is off for a test, and its countdown would end. Start the pump first."));
        return;
    }
    emit goBackAsked();
}

void SessionViewModel::back_up_today() {
    if (!demo_ && !readOnly()) {
        copies_->back_up_today();
    }
}

void SessionViewModel::openTemplate(const QString& id) {
    auto found = context_.store.setting_template(Id{id.toStdString()});
    if (!failed(found)) {
        show_template(std::move(found).value());
    }
}

void SessionViewModel::makeTemplate(const QString& id) {
    auto made = templates_->make_from(Id{id.toStdString()});
    if (!failed(made)) {
        show_template(std::move(made).value());
    }
}

void SessionViewModel::show_template(SettingTemplate described) {
    described_ = std::make_unique<TemplateViewModel>(context_, std::move(described),
                                                     template_folders_of_mine(), nullptr);
    emit placeChanged();
}

void SessionViewModel::go_back_from_templates() {
    set_problem({});
    if (described_) {
        failed(templates_->reload());
        take_down(std::move(described_));
        return;
    }
    if (visit_) {
        visit_->show_again();
    }
    lay_over(Over::nothing);
}

void SessionViewModel::leave() {
    if (busy()) {
        return;
    }
    removed_->forget();
    if (over_ == Over::templates) {
        go_back_from_templates();
        return;
    }
    if (over_ != Over::nothing) {
        lay_over(Over::nothing);
        return;
    }
    if (!asks_before_leaving(false)) {
        go_back();
    }
}

void SessionViewModel::leaveAnyway(bool closing) {
    if (closing) {
        closing_ = true;
        emit closeNow();
    } else {
        go_back();
    }
}

void SessionViewModel::go_back() {
    if (visit_) {
        visit_->close();
        auto closing = std::move(visit_);
        const auto off = pumps_off(closing->file(), context_.clock);
        off_elsewhere_.insert(off_elsewhere_.end(), off.begin(), off.end());
        look_for_timing_elsewhere();
        follow_pumps();
        show_house(house_);
        take_down(std::move(closing));
        return;
    }
    history_->stopComparing();
    house_ = House{};
    back_up_today();
    failed(houses_->reload());
    emit placeChanged();
}

QStringList SessionViewModel::pressFolders() const {
    QStringList folders = template_folders(paper_.folder);
    folders.append(QDir::homePath());
    return folders;
}

void SessionViewModel::look_for_presses() {
    found_ = readOnly() ? std::vector<FoundPresses>{} : presses_to_take(pressFolders(), context_.store);
    emit foundPressesChanged();
}

QString SessionViewModel::foundPresses() const {
    if (found_.empty()) {
        return {};
    }
    const QString number = QString::number(found_.front().missing);
    return found_.front().is_signed
               ? tr("Presses were written elsewhere and can't go into their visit, which is signed since: "
                    "%1, in %2")
                     .arg(number, found_.front().file)
               : tr("Presses were written elsewhere and are not in the record: %1, in %2")
                     .arg(number, found_.front().file);
}

void SessionViewModel::takeFoundPresses() {
    if (found_.empty() || failed(take_presses(found_.front(), context_.store))) {
        return;
    }
    const Id taken = found_.front().visit.id;
    look_for_presses();
    if (visit_ && visit_->file().visit.id == taken && !visit_->waits_for_storage()) {
        const int step = visit_->step();
        openVisit(qstring(taken.text));
        visit_->goTo(step);
    }
    failed(houses_->reload());
}

void SessionViewModel::leaveFoundPresses() {
    if (!found_.empty()) {
        found_.erase(found_.begin());
    }
    emit foundPressesChanged();
}

bool SessionViewModel::resume_running_visit(TimedIn where) {
    if (readOnly()) {
        return false;
    }
    const auto running = context_.store.visit_with_running_stopwatch(where);
    if (!running || !running.value()) {
        if (!running) {
            set_problem(qstring(running.error().text()));  // what stands there from the opening is not over
        }
        return false;
    }
    openVisit(qstring(running.value()->text));
    if (visit_) {
        visit_->goTo(static_cast<int>(visit_->proof()->watching() ? Step::proof : Step::time_the_water));
    }
    return visit_ != nullptr;
}

QImage SessionViewModel::sheet_page(int index) const {
    return visit_ ? visit_->sheet()->page(index) : QImage{};
}

QImage SessionViewModel::summary_page() const {
    return visit_ ? visit_->handout()->summary_page() : QImage{};
}

}  // namespace wetfront::ui
