// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/templates_view_model.h"

#include <algorithm>

#include "sheet/words.h"
#include "viewmodels/template_files.h"
#include "viewmodels/template_problems.h"

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

std::optional<SettingTemplate> generic_with(const Id& id) {
    for (const auto& [kind, name] : EnumNames<TimerKind>::all) {
        if (auto made = generic_template(kind); made.id == id) {
            return made;
        }
    }
    return std::nullopt;
}

}  // namespace

TemplatesViewModel::TemplatesViewModel(const Context& context, std::function<QStringList()> folders,
                                       QObject* parent)
    : QObject{parent}, context_{context}, folders_{std::move(folders)} {}

QVariantMap TemplatesViewModel::line(const SettingTemplate& described) const {
    return {{"id", qstring(described.id.text)},
            {"name", qstring(described.name)},
            {"note", qstring(described.note)},
            {"detail", tr("%1, settings: %2")
                           .arg(context_.formatter.text(label_of(described.kind)),
                                QString::number(described.settings.size()))},
            {"problem", problems_of(described).first()}};
}

QVariantList TemplatesViewModel::generic() const {
    QVariantList list;
    for (const auto& [kind, name] : EnumNames<TimerKind>::all) {
        list.append(line(generic_template(kind)));
    }
    return list;
}

Result<void> TemplatesViewModel::reload() {
    WF_TRY(const auto templates, context_.store.setting_templates());
    own_.clear();
    for (const auto& described : templates) {
        own_.append(line(described));
    }
    emit changed();
    return boost::outcome_v2::success();
}

Result<SettingTemplate> TemplatesViewModel::make_from(const Id& id) {
    WF_CHECK(reload());
    auto made = generic_with(id);
    if (!made) {
        WF_TRY(made, context_.store.setting_template(id));
    } else {
        made->note.clear();
    }
    made->id = context_.store.new_id();
    made->name = name_not_taken(tr("Copy of %1").arg(qstring(made->name)));
    WF_CHECK(context_.store.save(*made));
    WF_CHECK(reload());
    return *made;
}

// Where templates are chosen, the name is all there is to tell them apart.
std::string TemplatesViewModel::name_not_taken(const QString& wanted) const {
    constexpr int most_characters = 200;
    const auto taken = [this](const QString& name) {
        return std::ranges::any_of(own_, [&](const QVariant& each) { return each.toMap()["name"] == name; });
    };
    QString name = wanted.left(most_characters);
    for (int number = 2; taken(name); ++number) {
        const QString behind = QStringLiteral(" (%1)").arg(number);
        name = wanted.left(most_characters - static_cast<int>(behind.size())) + behind;
    }
    return name.toStdString();
}

void TemplatesViewModel::lookForFiles() {
    files_ = files_that_may_be_templates(folders_());
    emit filesChanged();
}

QString TemplatesViewModel::lookAt(const QString& file) {
    auto read = read_template(file.trimmed());
    if (!read) {
        dropOffered();
        return tr("Nothing is added. %1").arg(qstring(read.error().text()));
    }
    offered_ = std::move(read).value();
    emit offeredChanged();
    return {};
}

void TemplatesViewModel::dropOffered() {
    offered_.reset();
    emit offeredChanged();
}

bool TemplatesViewModel::is_here(const SettingTemplate& described) const {
    return generic_with(described.id) || context_.store.setting_template(described.id);
}

QVariantMap TemplatesViewModel::offered() const {
    if (!offered_) {
        return {};
    }
    auto map = line(*offered_);
    QStringList lines;
    for (const auto& setting : offered_->settings) {
        const QString label = qstring(setting.label);
        const QString name = context_.formatter.text(label_of(setting.setting));
        lines.append(label == name ? label : QStringLiteral("%1 (%2)").arg(label, name));
    }
    map["lines"] = lines;
    const auto here = context_.store.setting_template(offered_->id);
    const bool listed = std::ranges::any_of(
        own_, [&](const QVariant& each) { return each.toMap()["id"] == qstring(offered_->id.text); });
    map["known"] =
        here && !listed ? tr("This template was removed here and can be brought back from Removed at the "
                             "houses. Adding it "
                             "makes a second one.")
        : here && here.value() == *offered_
            ? tr("This template is here already, just as it is in the file. Adding it makes a second one.")
        : is_here(*offered_) ? tr("This template is here already, but it is not the same as in the file. "
                                  "Adding it makes a second one; yours stays as it is.")
                             : QString{};
    return map;
}

QString TemplatesViewModel::addOffered() {
    if (!offered_) {
        return {};
    }
    // Timers name a template by its id: it keeps it, unless something else has it here.
    if (is_here(*offered_)) {
        offered_->id = context_.store.new_id();
    }
    offered_->name = name_not_taken(qstring(offered_->name));
    auto result = context_.store.save(*offered_);
    if (result) {
        result = reload();
    }
    if (!result) {
        return qstring(result.error().text());
    }
    dropOffered();
    return {};
}

}  // namespace wetfront::ui
