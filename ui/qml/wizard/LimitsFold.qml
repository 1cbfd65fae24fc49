// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Every margin and limit of the advice for this farm, by the question that it bears on, with its source and a way back.
Fold {
    id: fold

    required property LimitsViewModel limits
    required property NumberPad pad
    property bool readOnly: false

    title: qsTr("Margins and limits")
    summary: limits ? limits.summary : ""

    content: Component {
        ColumnLayout {
            spacing: Theme.space
            Layout.fillWidth: true
            Layout.leftMargin: Theme.space
            ErrorLine {
                text: fold.limits.problem
                Layout.fillWidth: true
            }
            Repeater {
                model: fold.limits.groups
                delegate: ColumnLayout {
                    id: group
                    required property var modelData
                    spacing: Theme.space
                    Layout.fillWidth: true
                    PlainWords {
                        text: group.modelData.title
                        kind: "title"
                        Layout.fillWidth: true
                    }
                    Repeater {
                        model: group.modelData.form
                        delegate: FormLine {
                            form: group.modelData.form
                            pad: fold.pad
                            readOnly: fold.readOnly
                            hasOwn: true
                            Layout.fillWidth: true
                        }
                    }
                }
            }
        }
    }
}
