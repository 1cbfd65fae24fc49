// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The settings of one question: a tick for whether the controller has it, and how it is entered there.
Card {
    id: group

    required property TemplateViewModel described
    required property var lines  // {key, name, units, timeOfDay, negative}
    required property NumberPad pad
    property bool moreShown: false
    default property alias more: rest.data

    visible: moreShown || lines.some(line => described.settings[line.key].shown)

    Repeater {
        model: group.lines
        delegate: ColumnLayout {
            id: setting
            required property var modelData
            readonly property var about: group.described.settings[modelData.key]
            property string problem
            visible: about.shown
            spacing: Theme.gap
            Layout.fillWidth: true
            TickLine {
                text: setting.modelData.name
                ticked: setting.about.used
                onToggled: wanted => setting.problem = group.described.use(setting.modelData.key, wanted)
                Layout.fillWidth: true
            }
            Repeater {
                model: setting.about.used ? 1 : 0
                delegate: Fold {
                    // At once: a head that grows to it only afterwards lays out its two texts without end.
                    width: setting.width
                    title: qsTr("On the controller: %1").arg(setting.about.label)
                    summary: setting.about.summary
                    content: TemplateSettingForm {
                        described: group.described
                        line: setting.modelData
                        about: setting.about
                        pad: group.pad
                        Layout.fillWidth: true
                    }
                    Layout.fillWidth: true
                }
            }
            ErrorLine {
                text: setting.problem.length > 0 ? setting.problem : setting.about.problem
                Layout.fillWidth: true
            }
        }
    }
    ColumnLayout {
        id: rest
        visible: group.moreShown
        Layout.fillWidth: true
    }
}
