// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Several things of one sort, each with a form; can be added to and taken from.
ColumnLayout {
    id: parts

    required property PartsModel model
    required property NumberPad pad
    required property string addText
    required property string removeText
    required property bool readOnly
    property string problem

    spacing: Theme.space

    Repeater {
        model: parts.model
        delegate: ColumnLayout {
            id: part
            required property int index
            required property string title
            required property FormModel form
            spacing: 0
            Layout.fillWidth: true
            FormCard {
                title: part.title
                form: part.form
                pad: parts.pad
                readOnly: parts.readOnly
                Layout.fillWidth: true
                ActionButton {
                    visible: parts.model.count > 1 && !parts.readOnly
                    text: parts.removeText.arg(part.title)
                    pictogram: "bin"
                    onClicked: parts.problem = parts.model.remove(part.index)
                }
            }
        }
    }
    ErrorLine {
        text: parts.problem
        Layout.fillWidth: true
    }
    ActionButton {
        visible: !parts.readOnly
        text: parts.addText
        pictogram: "plus"
        onClicked: parts.problem = parts.model.add()
    }
}
