// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheet_view_model.h"

#include <QDir>

#include "batch/sheet_reader.h"
#include "rules/checklists.h"
#include "sheet/sheet_file_name.h"
#include "store/house_visits.h"
#include "viewmodels/pump_off.h"

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}
QString failed(const Error& error) {
    return QString::fromStdString(error.text());
}

template <class List>
void remove_at(List& list, int row) {
    if (row >= 0 && row < static_cast<int>(list.size())) {
        list.erase(list.begin() + row);
    }
}

QString presses_wait() {
    return SheetViewModel::tr("Presses are not stored yet; make room first.");
}

}  // namespace

SheetViewModel::SheetViewModel(VisitRecord& record, const SheetPaper& paper,
                               std::vector<Person> known_persons, std::vector<Instrument> known_instruments,
                               QObject* parent)
    : QObject{parent},
      record_{record},
      paper_{paper},
      signatures_{new SignatureViewModel{record, this}},
      look_{paper, record.context().formatter},
      known_persons_{std::move(known_persons)},
      known_instruments_{std::move(known_instruments)} {
    connect(&record_, &VisitRecord::changed, this, &SheetViewModel::changed);
    connect(this, &SheetViewModel::formChanged, signatures_, &SignatureViewModel::sheet_changed);
}

QStringList SheetViewModel::persons() const {
    QStringList list;
    for (const auto& person : record_.file().visit.persons) {
        list.append(qstring(person.name));
    }
    return list;
}

QStringList SheetViewModel::personLines() const {
    QStringList list;
    for (const auto& person : record_.file().visit.persons) {
        list.append(person.role.empty() ? qstring(person.name)
                                        : tr("%1, %2").arg(qstring(person.name), qstring(person.role)));
    }
    return list;
}

QStringList SheetViewModel::knownPersons() const {
    QStringList list;
    for (const auto& person : known_persons_) {
        list.append(qstring(person.name));
    }
    return list;
}

QStringList SheetViewModel::instrumentLines() const {
    QStringList list;
    for (const auto& instrument : record_.file().visit.instruments) {
        list.append(
            instrument.last_checked.empty()
                ? qstring(instrument.name)
                : tr("%1, checked %2").arg(qstring(instrument.name), qstring(instrument.last_checked)));
    }
    return list;
}

QStringList SheetViewModel::knownInstruments() const {
    QStringList list;
    for (const auto& instrument : known_instruments_) {
        list.append(qstring(instrument.name));
    }
    return list;
}

QStringList SheetViewModel::openPoints() const {
    QStringList list;
    for (const auto& point : record_.file().visit.open_points) {
        list.append(qstring(point));
    }
    return list;
}

QString SheetViewModel::signedBy() const {
    const auto& signatures = record_.file().visit.signatures;
    if (signatures.empty()) {
        return {};
    }
    QStringList names;
    for (const auto& signature : signatures) {
        names.append(qstring(signature.person.name));
    }
    return tr("Signed by %1, %2")
        .arg(names.join(QStringLiteral(", ")),
             record_.context().formatter.date_and_time(signatures.back().at));
}

QStringList SheetViewModel::notReady() const {
    QStringList list;
    const auto& file = record_.file();
    if (record_.presses_not_stored() > 0) {
        list.append(presses_wait());
    }
    if (!pumps_off(file, record_.context().clock).empty()) {
        list.append(tr("A pump is off for a test and not back on automatic."));
    }
    for (const auto& bank : file.house.banks) {
        const auto* timings = record_.timings().of(bank.id);
        if (timings == nullptr || !timings->fill) {
            list.append(tr("%1 has no fill time.").arg(qstring(bank.name)));
        }
    }
    for (const auto step : {Step::safety, Step::before_leaving}) {
        for (const auto* line : open_lines(step, file.visit)) {
            list.append(tr("Not ticked: %1").arg(record_.context().formatter.text(line->text)));
        }
    }
    for (const auto& timer : file.house.timers) {
        if (file.visit.left_of(timer.id) == nullptr) {
            list.append(tr("%1 has no settings left.").arg(qstring(timer.name)));
        }
    }
    return list;
}

QString SheetViewModel::notReadyInShort() const {
    constexpr qsizetype most = 4;
    const QStringList all = notReady();
    const QString first = all.mid(0, most).join(QLatin1Char(' '));
    return all.size() > most ? tr("%1 And %2 more.").arg(first, QString::number(all.size() - most)) : first;
}

void SheetViewModel::follow_look() {
    emit formChanged();
    showPages();
}

void SheetViewModel::setLanguage(const QString& code) {
    look_.set_language(code);
    follow_look();
}
void SheetViewModel::setUnits(const QString& name) {
    look_.set_units(name);
    follow_look();
}
void SheetViewModel::setPaper(const QString& name) {
    look_.set_paper(name);
    follow_look();
}

QString SheetViewModel::keep_or_restore(const Visit& before) {
    const auto result = record_.save_visit();
    if (!result) {
        record_.visit() = before;
        return failed(result.error());
    }
    return {};
}

QString SheetViewModel::addPerson(const QString& name, const QString& role) {
    if (name.trimmed().isEmpty()) {
        return tr("Write a name.");
    }
    const Visit before = record_.file().visit;
    Person person{name.trimmed().toStdString(), role.trimmed().toStdString()};
    for (const auto& known : known_persons_) {
        if (person.role.empty() && known.name == person.name) {
            person.role = known.role;
        }
    }
    record_.visit().persons.push_back(std::move(person));
    return keep_or_restore(before);
}

void SheetViewModel::removePerson(int row) {
    const Visit before = record_.file().visit;
    remove_at(record_.visit().persons, row);
    keep_or_restore(before);
}

QString SheetViewModel::addInstrument(const QString& name, const QString& lastChecked) {
    if (name.trimmed().isEmpty()) {
        return tr("Write what it is.");
    }
    const Visit before = record_.file().visit;
    Instrument instrument{name.trimmed().toStdString(), lastChecked.trimmed().toStdString()};
    for (const auto& known : known_instruments_) {
        if (instrument.last_checked.empty() && known.name == instrument.name) {
            instrument.last_checked = known.last_checked;
        }
    }
    record_.visit().instruments.push_back(std::move(instrument));
    return keep_or_restore(before);
}

void SheetViewModel::removeInstrument(int row) {
    const Visit before = record_.file().visit;
    remove_at(record_.visit().instruments, row);
    keep_or_restore(before);
}

QString SheetViewModel::addOpenPoint(const QString& text) {
    if (text.trimmed().isEmpty()) {
        return tr("Write what is still open.");
    }
    const Visit before = record_.file().visit;
    record_.visit().open_points.push_back(text.trimmed().toStdString());
    return keep_or_restore(before);
}

void SheetViewModel::removeOpenPoint(int row) {
    const Visit before = record_.file().visit;
    remove_at(record_.visit().open_points, row);
    keep_or_restore(before);
}

Result<SheetContent> SheetViewModel::content(SheetKind kind, int revisions_to_come) const {
    const auto& context = record_.context();
    const auto& visit = record_.file().visit;
    WF_TRY(const int revision, context.store.revision_of(visit.id));
    WF_TRY(auto of_house, visit_files_of(context.store, visit.house));
    WF_TRY(auto photos, photos_of(context.store, visit));
    const SheetSource source{record_.file(), revision + revisions_to_come,
                             std::make_shared<const std::vector<VisitFile>>(std::move(of_house)),
                             std::move(photos)};
    return sheet_content(source, kind, context.clock.wall_now());
}

Result<QByteArray> SheetViewModel::pdf() const {
    const auto& context = record_.context();
    WF_TRY(const auto kept, context.store.signed_sheet(record_.file().visit.id));
    if (kept) {
        return QByteArray::fromStdString(kept->pdf);
    }
    WF_TRY(const auto sheet, content(SheetKind::commissioning));
    return paper_.pdf(sheet, look_.reader(), look_.size());
}

Result<void> SheetViewModel::keep_signed() {
    WF_TRY(const auto sheet, content(SheetKind::commissioning, 1));
    WF_TRY(const QByteArray bytes, paper_.pdf(sheet, look_.reader(), look_.size()));
    return record_.save_signed(bytes.toStdString());
}

void SheetViewModel::showPages() {
    const auto sheet = content(SheetKind::commissioning);
    pages_ = sheet ? paper_.pages(sheet.value(), look_.reader(), look_.size()) : std::vector<QImage>{};
    ++pages_revision_;
    emit pagesChanged();
}

QImage SheetViewModel::page(int index) const {
    return index >= 0 && index < pageCount() ? pages_[static_cast<std::size_t>(index)] : QImage{};
}

QString SheetViewModel::savePdf() {
    const auto bytes = pdf();
    if (!bytes) {
        return failed(bytes.error());
    }
    const QString name = qstring(sheet_file_name(record_.file(), SheetKind::commissioning));
    if (!QDir{}.mkpath(paper_.folder)) {
        return tr("The folder %1 cannot be made. Nothing is lost; choose another place for documents.")
            .arg(paper_.folder);
    }
    const QString path = QDir{paper_.folder}.filePath(name);
    const auto result = paper_.write(bytes.value(), path);
    return result ? tr("Written to %1").arg(path) : failed(result.error());
}

Result<bool> SheetViewModel::printed() const {
    const auto& context = record_.context();
    WF_TRY(const auto kept, context.store.signed_sheet(record_.file().visit.id));
    if (kept) {
        return paper_.print_pdf(QByteArray::fromStdString(kept->pdf));
    }
    WF_TRY(const auto sheet, content(SheetKind::commissioning));
    return paper_.print(sheet, look_.reader(), look_.size());
}

QString SheetViewModel::print() {
    const auto result = printed();
    if (!result) {
        return failed(result.error());
    }
    return result.value() ? tr("Sent to the printer.") : tr("Not printed.");
}

QString SheetViewModel::sign(int person) {
    const auto signer = static_cast<std::size_t>(person);
    if (person < 0 || signer >= record_.file().visit.persons.size()) {
        return tr("Choose who signs.");
    }
    if (record_.presses_not_stored() > 0) {
        return presses_wait();  // nothing goes into a signed visit any more
    }
    const Visit before = record_.file().visit;
    record_.visit().signatures = signatures_->signatures_with(signer, record_.context().clock.wall_now());
    if (const auto kept = keep_signed(); !kept) {
        record_.visit() = before;
        return failed(kept.error());
    }
    return {};
}

}  // namespace wetfront::ui
