// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// A form that is in sight once it is opened, with what comes of its entries below.
Fold {
    id: fold

    required property FormModel form
    required property NumberPad pad
    property bool readOnly: false
    property var results: []

    summary: form ? form.summary : ""

    content: Component {
        ColumnLayout {
            spacing: Theme.space
            Layout.fillWidth: true
            Layout.leftMargin: Theme.space
            Repeater {
                model: fold.form
                delegate: FormLine {
                    form: fold.form
                    pad: fold.pad
                    readOnly: fold.readOnly
                    Layout.fillWidth: true
                }
            }
            ResultLines {
                lines: fold.results
                Layout.fillWidth: true
            }
        }
    }
}
